/** Further invented classes, marked like the others, of the kinds that teachers film most: the weights of the finder are fitted on them too. */
import type { MarkedClass } from './score-marked.ts'

export const MARKED_CLASSES_MORE: readonly MarkedClass[] = [
  {
    title: 'knees after an operation',
    text: `[0:00] Morning, come in, find a chair. Sticks against the wall so nobody goes over them. For those I haven't met, you've all had a knee done in the last three months, so we work on bending it, straightening it and trusting it. Heel slides, quad squeezes, a few things standing up.
[0:24] Pain up to four out of ten is allowed. If it's still angry tomorrow morning you did too much today, so halve it. And keep your ice for afterwards. Right.
[0:42] <1>Sit on the edge of the plinth or lie back on it. First one then, the heel slide. Drag your heel towards your bottom, as far as it wants to go, and slide it out again. Let the foot skim the surface, no lifting it.
[1:04] If you can't get going put a carrier bag under the sock. Go slowly, breathe out on the way in. I'm after fifteen of those.</1> My wife does hers watching the snooker. Six weeks ago she couldn't do the top step.
[1:28] <2>Leg out straight now. This one's your static quad. Push the back of the knee down into the bed, tighten the thigh, toes up towards you. Hold it for a count of five and let go. We want ten of them.
[1:50] You should see the kneecap slide up a fraction. Don't hold your breath while you're squeezing.</2> <3>Leave the leg where it is, tighten it like you just did and lift the whole thing, about the height of a shoe box. Straight leg raise. Down slowly. If the knee bends as it comes up, stop there, it isn't ready.
[2:14] Two lots of eight on the operated leg, and have half a minute between.</3> Lovely. Have a breather, wiggle the ankles.
[2:30] <4>Now then, up on your feet, both hands on the back of the chair. Heel raises. Up on your toes, pause, and down under control. Weight over the big toes, not rolling out. We'll do twelve. Keep hold, even if you think you don't need it.</4>
[2:54] <5>Same position, same chair. Mini squats next. Feet hip width, stick your bottom back, bend a little, no more than thirty degrees or so, and push up through the heels. Ten please. Knees point the same way as your toes.
[3:16] Stop if it catches or gives way.</5> Good. <2>Sit down for me and give me five more of the static quads, just to calm things. Push down, hold, and relax.</2>
[3:36] <6>Last one for today is the step up. Bottom step only. Good leg goes up first if you're struggling, otherwise operated leg up, drive through the heel, bring the other one to meet it, and lower back down. Hold the rail.
[4:00] Eight on each leg. If it hurts under the kneecap use a lower step, a thick book will do.</6> Do the bed ones three times a day and the standing ones once. We'll look at the bike next month, not before. Off you go.`,
    taught: [
      { name: /heel slide/i, dose: { reps: 15 } },
      { name: /static quad/i, dose: { reps: 10, hold: 5 } },
      { name: /straight leg raise/i, dose: { sets: 2, reps: 8, rest: 30 } },
      { name: /heel raise/i, dose: { reps: 12 } },
      { name: /mini squat/i, dose: { reps: 10 } },
      { name: /step up/i, dose: { reps: 8, sides: true } },
    ],
    notTaught: [/bike/i],
  },
  {
    title: 'band class at lunch, without punctuation',
    text: `[0:00] hiya everyone long band and short band please and if you've forgotten yours there's spares in the blue box we've got half an hour so I'll be quick with the chat for once
[0:16] have a look along the rubber before you pull on it any nicks any sticky bits swap it because they do go ping and I've had one in the eyebrow so I know
[0:34] <1>okay we're going to start with pull aparts arms out in front of you band in both hands about shoulder width and you pull it apart until it hits your chest squeeze the shoulder blades and come back slow
[0:56] keep your shoulders down away from your ears chin tucked fifteen of these</1> lovely stuff <2>stand on the band now feet hip width ends of the band in your hands palms forward this is your biceps curl elbows glued to your sides curl it up and take three seconds to come down
[1:22] don't swing your back to get it up two sets of twelve thirty seconds off in the middle</2> my postman saw me doing this through the window yesterday he's not been back
[1:42] <3>right keep standing on it and bring the band up to your shoulders for the overhead press push the hands up to the ceiling biceps by your ears and lower to the shoulders ten reps nice and steady
[2:02] if your shoulders grumble go one arm at a time squeeze your bum so your back doesn't arch</3> <4>short band next pop it just above the knees and we'll do crab walks sink into a little squat and step out to the side knees pushing out against the band ten steps that way and ten steps back
[2:28] stay low don't bounce up between the steps</4> good lie down on the floor for me <5>glute bridges band still above your knees feet flat push through the heels and lift your hips up squeeze at the top for two seconds and lower
[2:52] fifteen of those and twenty seconds rest and then fifteen again knees stay apart don't let the band win</5> <6>roll on to your side clams heels together open the top knee like a book hips stacked
[3:14] twelve each side you'll feel it in the back pocket</6> <1>up you get one more set of pull aparts to finish another fifteen pull and squeeze and slow back</1>
[3:36] we were meant to do rows off the door but Karen's locked it so that's next week see you then`,
    taught: [
      { name: /pull apart/i, dose: { sets: 2, reps: 15 } },
      { name: /biceps? curl/i, dose: { sets: 2, reps: 12, rest: 30 } },
      { name: /overhead press/i, dose: { reps: 10 } },
      { name: /crab walk/i, dose: { reps: 10, sides: true } },
      { name: /bridge/i, dose: { sets: 2, reps: 15, rest: 20, hold: 2 } },
      { name: /clam/i, dose: { reps: 12, sides: true } },
    ],
    notTaught: [/rows?$/i],
  },
  {
    title: 'silver strength, American',
    text: `[0:00] Good morning, sunshine people. Chairs on the carpet, not the tile, and push the back against the wall. Water where you can reach it. Everything we do this morning is ten repetitions unless I tell you something different, so you don't have to wait on me for a number.
[0:24] If you get dizzy, sit. If your chest feels tight, you stop and you tell me. Nobody gets a trophy for toughing it out. Today's lineup is toe taps, the sit to stand, a chair row with the band, some heel raises and then my favorite, the tightrope.
[0:48] <1>So we'll warm up with toe taps. Sit tall near the front of your seat, feet flat. Tap the right toes out in front, bring it home, tap the left. Keep your belly gently pulled in. Little faster if you want to.</1>
[1:10] Somebody asked about my granddaughter. She's nine and she can do forty push-ups. I can't. <2>Okay, scoot forward. Feet under your knees. Lean your nose over your toes and stand all the way up. That there is the sit to stand. Then reach back for the seat and come down slow, don't plop.
[1:38] Use your hands on your thighs if you need them. Breathe out as you rise. We'll do two sets, take a minute in between.</2> <3>Grab that band. Loop it around the balls of your feet, legs out long, and sit up. Chair row. Pull your elbows straight back, pinch a pencil between your shoulder blades, and let it out slow.
[2:08] Toes up so it doesn't slip off. Twelve on this one.</3> Whew. Shake your hands out. <4>Let's stand up behind the chair, both hands on it. Heel raises, up on your tippy toes and back down. Like you're trying to see over a fence.
[2:34] Keep a hand on that chair the whole time.</4> <5>Stay right there. Here comes the tightrope. Put one foot directly in front of the other, heel to toe, eyes on the clock, and just hold. Twenty seconds, then switch feet. Fingertips on the chair, and if you're rock steady, float them.
[3:02] If you start to tip, step out, that's no failure.</5> <2>Now before you sit, one more set of those sit to stands. Nose over toes. Ten of them. Slow on the way down.</2>
[3:26] That's all she wrote. We'll save the marching for Friday.`,
    taught: [
      { name: /toe tap/i, dose: { reps: 10 } },
      { name: /sit to stand/i, dose: { sets: 2, reps: 10, rest: 60 } },
      { name: /row/i, dose: { reps: 12 } },
      { name: /heel raise/i, dose: { reps: 10 } },
      { name: /tightrope/i, dose: { hold: 20, sides: true } },
    ],
    notTaught: [/march/i, /push-?up/i],
  },
  {
    title: 'barbell evening, plain speaking',
    text: `[0:00] Right, settle down. Bars are out, collars on, somebody find the chalk. It's squats then presses tonight and I want to look at your pulls as well. If it's your first time, empty bar, I don't care what you deadlift at home.
[0:20] The plan on the board: back squat five fives, strict press four sixes, then Romanians, three eights, and the farmer's thing to finish. Rest two minutes on all the big ones. Eighty per cent means eighty per cent.
[0:44] <1>Empty bar and under it. Bar sits on the shelf of your upper back, hands as close as they'll go, elbows down. Step back, two steps, not five. Big breath in, brace, sit down between your hips and stand up hard.
[1:08] Knees track over your toes, I don't want to see them kiss. Safeties just below your lowest point, always, and if you've no safeties you've a mate behind you. Go to where your hip crease is level with your knee.
[1:32] If your back rounds at the bottom, that's your depth, stop there.</1> I once watched a lad in Doncaster squat two hundred with a cold pasty in his other hand. No idea. <2>Okay, strict press. Bar in the front rack, wrists over elbows, squeeze your backside. Press it straight up past your nose and push your head through at the top.
[2:02] Breathe at the top, not halfway. If you lean back it's too heavy, so take some off.</2> <3>Next, Romanian deadlift. You pick the bar up properly first. Soft knees and they don't move, push your hips back towards the wall and let the bar slide down your thighs till your hamstrings bite.
[2:28] Flat back, chin tucked. Three seconds down, stand up quick. It's not touching the floor.</3> Good, water. <1>Back to the squats, work sets now. First five. Chest up, drive. Rack it. Add a bit.</1>
[2:58] <4>And to end on, suitcase carries. One heavy dumbbell, by your side, walk to the wall and back. Stay bolt upright, as if the weight weren't there. That's twenty metres and you do it twice each hand.
[3:22] Put it down with a bent knee, not a bent back.</4> Bench is Thursday. Tidy your plates.`,
    taught: [
      { name: /squat/i, dose: { sets: 5, reps: 5, rest: 120 } },
      { name: /press/i, dose: { sets: 4, reps: 6, rest: 120 } },
      { name: /romanian/i, dose: { sets: 3, reps: 8, rest: 120 }, tempo: '3-x-x-x' },
      { name: /suitcase|farmer/i, dose: { sets: 2, metres: 20, sides: true } },
    ],
    notTaught: [/bench/i],
  },
  {
    title: 'rings in the park',
    text: `[0:00] G'day legends. Rings are hanging off the big branch, I've swung on every strap this morning, and you'll do the same before you load it. Buckles clicked, straps not twisted. If the branch creaks, you're off.
[0:20] We'll do support, rows, a bit of upside down if we're feeling it and then dips, maybe. Depends on you lot. Doesn't it always?
[0:36] <1>So first cab off the rank, support hold. Hands on the rings, jump up, lock the elbows and turn the rings out a touch, like you're pouring water out of two jugs. Shoulders down. Beginners keep the toes on the ground.
[1:00] Twenty seconds, four goes, and a minute off in between. When you're done you lower down, no dropping off.</1> Righto. <2>Drop the straps to waist height. Lean back under them, body like a plank, and pull the rings to your ribs. Ring rows, yeah? Elbows close. Walk the feet forward to make it harder.
[1:26] Three sets of eight to ten. Don't let the bum sag.</2> How's everyone's grip? Mine's cooked. <3>Now, tuck hang. Hold on, knees to your chest, roll back until your hips are over your head and just breathe there. Look at your knees. If your head goes thumpy come down.
[1:54] Someone stands beside you the first time, no heroes. Ten seconds, three times.</3> <4>Push-ups on the rings next. Straps low, so the rings are shin height. Hands in, straight body, down till your chest is between the rings and press, then turn them out at the top.
[2:22] Rings shouldn't rub your arms. Knees down is fine. Sets of six, do three of those, ninety seconds rest.</4> <5>The one I call the dead koala. Hug one ring with the crook of both elbows, knees up, and hang. It's for your biceps and your dignity. Fifteen seconds. Then fifteen off. Then again.
[2:50] Don't laugh or you'll lose it.</5> <1>Last thing, back to the support for one more, just ten seconds. Lock out, rings out. And down you come.</1> Muscle-ups? Nah mate. Ask me in a year.`,
    taught: [
      { name: /support/i, dose: { sets: 4, hold: 20, rest: 60 } },
      { name: /row/i, dose: { sets: 3, reps: [8, 10] } },
      { name: /tuck hang/i, dose: { sets: 3, hold: 10 } },
      { name: /push-?up/i, dose: { sets: 3, reps: 6, rest: 90 } },
      { name: /koala/i, dose: { sets: 2, hold: 15, rest: 15 } },
    ],
    notTaught: [/muscle/i, /\bdips?\b/i],
  },
  {
    title: 'run school',
    text: `[0:00] Evening runners. Dark out, so lights on, and watch the wet leaves by the gate. We've jogged ten minutes to get here so you're warm, and if you're not, jog a bit more. No sprinting on cold legs.
[0:20] Three drills, then strides, then the loop. All the drills are twenty metres and you walk back. That's your recovery, that walk.
[0:36] <1>High knees to begin. Tall, on your toes, thigh up to level, quick little contacts. Arms go from your pocket to your chin. I don't care how fast you travel, I care how quick the feet are. Twice through.</1>
[1:02] <2>Then heel flicks. Same thing but the heel comes up under you, quick, knees pointing at the ground. Twice again. Don't lean forward from the waist.</2> Nobody's dog is on the track, is it? Last week there was a spaniel. Won the session.
[1:26] <3>Third drill, the skipping. Just like in the playground. Skip for height, opposite arm and leg, land soft through the ankle. If your calves are moaning, march it. Three of those.</3> <4>Okay, so on to strides. Sixty metres, building up, so you finish at about ninety per cent, never flat out. Relaxed face. Tall hips.
[1:54] We'll do six of them. Jog back, take your time, a minute at least.</4> <5>Now the loop. It's four hundred metres round the pond. First half steady, second half strong, and I mean strong, not dying. Five laps, two minutes rest after each one.
[2:22] If you feel dizzy or there's any pain in the chest you step off and you tell me.</5> And home. <6>Finish with a calf stretch on the kerb. Heel drops off the edge, knee straight, hold thirty seconds, then bend it and hold another thirty. Both legs.</6>
[2:50] The hills are in the book for next Tuesday. Bring gloves.`,
    taught: [
      { name: /high knees/i, dose: { sets: 2, metres: 20 } },
      { name: /heel flick/i, dose: { sets: 2, metres: 20 } },
      { name: /skip/i, dose: { sets: 3, metres: 20 } },
      { name: /stride/i, dose: { sets: 6, metres: 60, rest: 60 } },
      { name: /loop/i, dose: { sets: 5, metres: 400, rest: 120 } },
      { name: /calf stretch/i, dose: { sets: 2, hold: 30, sides: true } },
    ],
    notTaught: [/hill/i],
  },
  {
    title: 'middle of the body, mat class',
    text: `[0:00] Hello and welcome in. Lie down straight away if you like, nobody's judging. Knees bent, feet on the mat. Let the floor have your weight for a second. We're only here twenty minutes.
[0:18] I'll show every one in an easy form and build from there, so stop at whichever level suits. Neck sore? Rest the head, always an option.
[0:32] <1>Let the breath go wide into the ribs. As you breathe out, feel the tummy draw in, as if you were doing up a zip. That's all it is, zip breathing. Eight of those in your own time.</1>
[0:54] <2>From there, knee folds. Float one knee up until it's over the hip, put it back, other one. Pelvis stays heavy, imagine a cup of tea on it. Ten altogether, taking turns.
[1:18] Ribs soft.</2> <3>We'll build on that with the dead bug. Both knees up, arms to the ceiling. One heel goes away and the opposite arm goes over your head, come back, other side. Breathe out as you reach away. If your back comes off the mat, shorten it, or just do the legs.
[1:44] Six each side.</3> Okay, hug your knees in. My teacher used to bring her cat to class. He had the best abs of all of us. <4>Roll on to your side in one long line. Elbow under the shoulder. Lift the hips. Side plank, and you can keep the bottom knee down. Hold for twenty seconds and roll over. We'll go twice on each side.
[2:16] Don't sink into the shoulder.</4> <5>Come up on to hands and knees. The superman, some people call it bird dog. Reach one leg behind you and the other hand forward, long rather than high. Hold for three breaths, change. Four times each side.
[2:42] Nothing spills off your back.</5> <6>Sit back and turn around. Feet flat, hands behind your thighs, and roll halfway back, scooping the tummy, then come up. So that's a half roll back. Slow, four counts down and four counts up. Eight of them, and leave this one out if your bones are thin.</6>
[3:10] <3>One more time on your back for the dead bugs, quicker now. Reach and reach. Another six each side. Keep that zip done up.</3> Plank week is next week, I warned you.`,
    taught: [
      { name: /breathing/i, dose: { reps: 8, unit: 'breath' } },
      { name: /knee fold/i, dose: { reps: 10 } },
      { name: /dead ?bug/i, dose: { sets: 2, reps: 6, sides: true } },
      { name: /side plank/i, dose: { sets: 2, hold: 20, sides: true } },
      { name: /superman|bird ?dog/i, dose: { reps: 4, sides: true } },
      { name: /roll back/i, dose: { reps: 8 } },
    ],
    notTaught: [/^planks?$/i],
  },
  {
    title: 'garage circuit with names of its own',
    text: `[0:00] What's up, crew. Six stations chalked on the floor, thirty-five seconds on, twenty-five off, and we go around three times. No music, the neighbors complained. Walk it with me once and I'll show you what's what.
[0:20] <1>Station one is the mailbox. Hold your dumbbell at your chest, squat, and when you come up, push it straight out in front like you're shoving a letter in the box. Chest tall. Light one is fine.</1>
[0:42] <2>Two, bear crawls. Hands and feet, knees an inch off the floor, crawl up to the line, back up again. Flat back. If your wrists hate it, do a plank on your elbows.</2>
[1:02] <3>Station three, you've got the slam ball. Reach tall, throw it down between your feet, squat and pick it up. Look where it bounces, it'll find your nose.</3> <4>Four's a lazy one, the dead hang. Grab the bar, let your shoulders come up to your ears and then pull them down an inch. Step down off the box, don't jump.</4>
[1:32] <5>Over here at five it's skaters. Bound to the side, land soft on one leg, other foot sweeps behind. Shorten it up or step it if your knees aren't friends with you.</5> <6>And six, rope pulls. Sit down, legs braced, drag the sled in hand over hand. Back straight. When it's here run it back out.</6>
[1:58] Everyone on a station? You got two minutes of fun coming, well, eighteen. And go. <1>Mailbox, push it out, squat deep.</1> <2>Bears, knees low.</2> <3>Slam it, all of you into it.</3>
[2:24] <4>Hangers, shoulders down, breathe.</4> <5>Skaters, stick the landing.</5> <6>Pull, pull, hand over hand.</6> That's time, rest up. I hurt my thumb on that sled in March, so keep the rope off the wheels.
[2:50] If you feel like you're gonna puke, that's your sign to walk. Burpees I'm saving for Saturday.`,
    taught: [
      { name: /mailbox/i, dose: { sets: 3, work: 35, rest: 25 }, scheme: 'circuit' },
      { name: /bear crawl/i, dose: { sets: 3, work: 35, rest: 25 }, scheme: 'circuit' },
      { name: /slam/i, dose: { sets: 3, work: 35, rest: 25 }, scheme: 'circuit' },
      { name: /hang/i, dose: { sets: 3, work: 35, rest: 25 }, scheme: 'circuit' },
      { name: /skater/i, dose: { sets: 3, work: 35, rest: 25 }, scheme: 'circuit' },
      { name: /rope pull/i, dose: { sets: 3, work: 35, rest: 25 }, scheme: 'circuit' },
    ],
    notTaught: [/burpee/i],
  },
]
