/** Invented classes of further kinds, marked like the others. First kept apart; since the finder is weighed, fitted on like them. */
import type { MarkedClass } from './score-marked.ts'

export const MARKED_CLASSES_FURTHER: readonly MarkedClass[] = [
  {
    title: 'water aerobics',
    text: `[0:00] Good morning, ladies, and Frank. Water's eighty-three today, so no complaints. If you can't touch the bottom, come in to where it's chest deep. Grab a noodle from the bin, you won't need it till later.
[0:20] <1>Let's get moving with a jog. Just jog in place, heels all the way down, arms pulling like you mean it. We'll go two minutes here while everybody gets in.
[0:40] Shoulders under the water if you can.</1> <2>Okay, jumping jacks. Feet out and in, keep your hands under the surface so you've got resistance, palms pushing. Thirty seconds, and then rest for fifteen, and then one more time. Bounce as low as you like.
[1:04] If your bladder or your knees don't like it, step side to side instead.</2> My grandson swims for his college, he does four thousand yards before breakfast.
[1:20] <3>Next thing, cross-country skis. One leg front, one leg back, switch with a little hop, opposite arms. Long strides. Forty-five seconds. Don't let the back arch, tuck your tail a little.</3>
[1:40] Come to the wall now, hold the gutter with one hand. <4>This is a standing leg lift, out to the side. Toes forward, squeeze it up to the side against the water and pull it back in, just as strong. We want fifteen. Then turn around, same on the other leg.
[2:06] Stand tall, don't lean over the wall.</4> <5>Noodle time. Put it behind you under your arms, float back, and bicycle those legs. Big circles with the knees. You're going to pedal for a minute and a half, and then back the other way for a minute and a half.
[2:34] If you feel yourself tipping, sit up a little more.</5> <6>Then noodle in front, hands shoulder width, push it down to your thighs with straight arms and let it float up with control. So those are your noodle push downs. Two sets of twelve, resting about twenty seconds in between.</6>
[3:00] We were going to do wall planks but the swim team's waiting. Stretch at home, bye now.`,
    taught: [
      { name: /jog/i, dose: { work: 120 } },
      { name: /jacks/i, dose: { sets: 2, work: 30, rest: 15 } },
      { name: /ski/i, dose: { work: 45 } },
      { name: /leg lift/i, dose: { reps: 15, sides: true } },
      { name: /bicycle|pedal/i, dose: { work: 90, sides: true } },
      { name: /push downs?/i, dose: { sets: 2, reps: 12, rest: 20 } },
    ],
    notTaught: [/wall plank/i],
  },
  {
    title: 'barre',
    text: `[0:00] Hello my loves. Socks with grips please, the floor's just been done. Barre height should be about hip height. We're an hour all told and we start with the legs because it gets them out of the way.
[0:18] <1>First position. Heels together, toes out like a slice of pizza. Hand light on the barre. So these are pliés. Bend the knees out over your toes, keep the spine tall, and squeeze the inner thighs to come up. Sixteen full ones, slow. Then stay at the bottom and pulse for eight.
[0:48] Knees over toes, never rolling in.</1> <2>Onto the balls of your feet. Relevés. Rise up, rise up, all the way to the top, lower with control, heels kissing. Twenty. If you're new, twelve is loads.
[1:10] Use the barre if the balance goes.</2> <3>Turn to face it, step back, little fold at the hips. Standing leg soft, the other leg goes straight behind, and lift, an inch, that's all. Arabesque lifts. Three lots of ten, with a breath in between.
[1:38] If you feel it in your lower back you're too high. Then the other leg, same thing, three lots of ten.</3>
[1:56] I did a whole class on this in Leeds once and nobody could walk downstairs. <4>Grab your light weights. Bicep curls, standing in a tiny plié. Elbows pinned, palms up, curl for two, down for two. Fifteen slow, then fifteen quick.
[2:20] No heavier than two kilos, you don't need it.</4> <5>On the floor. Side lying, bottom leg bent, top leg straight and level with your hip. It's circles. Ten forwards, ten backwards, small as a teacup, and then we roll over and do that on the other leg.
[2:48] Don't let the waist sink.</5> <6>Last thing is a wall sit, back flat on the mirror please, slide down until your thighs are level, arms folded. A minute if you can, forty-five if you can't.
[3:12] Don't hold your breath.</6> And we're done. Tendus next week, remind me.`,
    taught: [
      { name: /pli/i, dose: { reps: 16 } },
      { name: /relev/i, dose: { reps: 20 } },
      { name: /arabesque/i, dose: { sets: 3, reps: 10, sides: true } },
      { name: /curl/i, dose: { reps: 15 } },
      { name: /circle/i, dose: { reps: 10, sides: true } },
      { name: /wall sit/i, dose: { hold: [45, 60] } },
    ],
    notTaught: [/tendu/i],
  },
  {
    title: 'suspension straps',
    text: `[0:00] Alright team. Straps are set mid length, give yours a yank before you put weight on it. I weigh two ten and it holds me, so you're fine, but check it anyway. It's gonna be five exercises, forty seconds each, and we'll go through it three times, twenty seconds to switch.
[0:22] <1>Start with the low row. Face the anchor, lean back till the straps are tight, walk your feet forward. Pull your chest to your hands, elbows skim the ribs, and lower all the way. One straight line, no sagging hips. Step back to make it easier.</1>
[0:46] <2>Now turn around, face away. Chest press. Arms straight in front, lean into it, bend your elbows and come down between your hands, push back. Keep the straps off your arms.</2>
[1:04] <3>Third one's a single leg squat. Hold the handles, one foot hovering, sit back and down on the other one, help yourself up with the arms as little as you can. Switch at twenty seconds. Knee stays over the middle toes.</3>
[1:28] <4>Get on the floor, toes in the foot cradles, facing down. From your plank pull both knees into your chest, then send them back out. Those would be knee tucks. Butt level. Rest on your elbows if your wrists are sore.</4>
[1:50] <5>And the fifth, hamstring curls. Roll over, heels in the cradles, hips up, drag the heels in, and let 'em out slow. Hips stay up the whole time.</5>
[2:06] Good? Cool. First round, on my go. <1>Rows. Pull. Squeeze those blades. Twenty to go. And rest.</1> <2>Press. Lean in. Strong body. Done, switch.</2> <3>Single leg. Sit. Switch legs. Stand up tall, and rest.</3> <4>Tucks. Knees in, knees out. Don't sag. Time.</4> <5>Curls. Hips up. Slow on the way out. That's a round.</5>
[3:20] Grab a sip, a minute before we go again. I'm not gonna show the pistol, nobody's ready.`,
    taught: [
      { name: /row/i, dose: { sets: 3, work: 40, rest: 20 }, scheme: 'circuit' },
      { name: /chest press/i, dose: { sets: 3, work: 40, rest: 20 }, scheme: 'circuit' },
      { name: /single leg squat/i, dose: { sets: 3, work: 40, rest: 20 }, scheme: 'circuit' },
      { name: /tuck/i, dose: { sets: 3, work: 40, rest: 20 }, scheme: 'circuit' },
      { name: /hamstring curl/i, dose: { sets: 3, work: 40, rest: 20 }, scheme: 'circuit' },
    ],
    notTaught: [/pistol/i],
  },
  {
    title: 'postnatal core',
    text: `[0:00] Hello, lovely to see so many babies. If yours wants feeding, feed, nobody minds. You should have had your six week check before you join in, and if anything drags or bulges down below, that's your sign to stop and talk to a physio.
[0:22] Come to lying on your back, knees bent, baby on your chest if that's where they're happy. <1>Belly breathing. Hands round your lower ribs, breathe in and feel them widen, breathe out through pursed lips and let everything draw gently up and in. We take eight breaths like that.
[0:50] Nothing forced.</1> <2>Add the pelvic floor. As you breathe out, lift from the back passage to the front, like a zip. Hold it for five, let go completely for five. Ten goes. The letting go matters as much as the lifting.
[1:20] Don't clench your bottom.</2> <3>Heel slides. Breathe out, and slide one heel away along the mat till the leg is nearly straight, breathe in and bring it back. Pelvis stays level. Six to eight on each leg. I know it looks like nothing.
[1:48] Watch for any doming down the middle, and if you see it, slide less far.</3> Oh bless, somebody's found their thumb. My eldest sucked hers till she was seven.
[2:04] <4>Bent knee fall outs. Same start. Let one knee drop slowly out to the side, only as far as the other hip lets it, and draw it in. Eight a side, breathing out as it comes in. Gently if your pubic bone is sore.</4>
[2:26] <5>Roll on to your side and push up to all fours. Hands under shoulders, and on an out breath slide one arm forward and the opposite leg back, just toes on the floor. Pause for three seconds, come back. That's bird dog, the baby version. Five times each side, do take your time.
[2:56] Keep your tummy from hanging.</5> <6>To end, against the wall, little wall press-ups. Hands at chest height, elbows back, nose to the wall and away. Two tens. Breathe out as you push.</6> Planks and crunches can wait another few months. Lovely, put the kettle on.`,
    taught: [
      { name: /breathing/i, dose: { reps: 8, unit: 'breath' } },
      { name: /pelvic floor/i, dose: { reps: 10, hold: 5, rest: 5 } },
      { name: /heel slide/i, dose: { reps: [6, 8], sides: true } },
      { name: /fall outs?/i, dose: { reps: 8, sides: true } },
      { name: /bird dog/i, dose: { reps: 5, hold: 3, sides: true } },
      { name: /wall press/i, dose: { sets: 2, reps: 10 } },
    ],
    notTaught: [/crunch/i],
  },
  {
    title: 'stretching with a partner',
    text: `[0:00] Evening. Find a partner about your own size. Rule one, the one being stretched is the boss. You say stop, they stop. Nobody pushes on a joint. We've twenty-five minutes so about four each.
[0:20] <1>Hamstrings first. One of you flat on your back, other one kneeling, takes the heel on their shoulder and leans forward till there's a pull behind the thigh. Push your heel down into their shoulder, about a quarter of your strength, for six seconds, let go, and they take you a little further for twenty. Three times on that leg and then the other one.
[0:58] Knee soft. Stop short of tingling.</1> Now swap places, same job. Chat among yourselves. It took me a year to touch my toes.
[1:18] <2>Right, seated straddle. Sit facing each other, legs wide, feet to feet, take hold of the wrists. One leans back, so the other one comes forward. Long spines. Stay for forty seconds, then see-saw the other way. Twice each.
[1:44] If your inner thighs shout, bend the knees.</2> <3>The chest one now. Receiver kneels tall, hands behind the head, partner stands behind and draws the elbows back, really softly. You're opening the front of the chest. Half a minute, have a rest, and another half a minute.
[2:12] Ribs down, no arching to cheat.</3> <4>Quads, lying on your front. Partner takes the ankle and brings the heel toward your bum. Hips stay on the mat. Hold it thirty to forty seconds each leg. If the knee's unhappy don't bend so far.</4>
[2:40] <5>And last of all a back to back twist. Sit cross legged, backs together, both turn to the right, hand on your own knee, other hand on theirs. Five slow breaths and then the other direction.</5> We won't do the shoulder stand, I've learned my lesson. Thank your partner.`,
    taught: [
      { name: /hamstring/i, dose: { sets: 3, hold: 20, sides: true } },
      { name: /straddle/i, dose: { sets: 2, hold: 40 } },
      { name: /chest/i, dose: { sets: 2, hold: 30 } },
      { name: /quad/i, dose: { hold: [30, 40], sides: true } },
      { name: /twist/i, dose: { reps: 5, unit: 'breath', sides: true } },
    ],
    notTaught: [/shoulder stand/i],
  },
  {
    title: 'shoulder bands, like a clinic',
    text: `[0:00] Okay, thanks for coming in. So these are the ones for your rotator cuff, do them every other day to begin with. The red band is plenty. A bit of muscle ache is fine, anything sharp or that keeps you awake, leave it a day and give us a ring.
[0:22] <1>First, external rotation. Tuck a rolled towel under your elbow, elbow at ninety degrees, band in both hands or tied to the door, and turn the forearm out like a gate opening. Slow back in. What I'd like is two sets of fifteen, with a minute or so in between.
[0:52] Wrist stays straight. Check the band for splits before you start.</1> <2>Internal rotation's the mirror image. Stand the other way round, door on the side that's working, and pull the hand in across your tummy. Same numbers again.
[1:14] Don't shrug.</2> I had the same thing two years ago from painting a ceiling. <3>Then rows. Door handle height, arms out in front, draw the elbows back and pinch the shoulder blades, hold that squeeze two seconds, and let it go slowly. Three sets, and you pick between ten and twelve reps.
[1:42] Ribs down.</3> <4>Next one I'd call a punch plus. Band round your back, ends in your hands, punch forward and then reach that extra inch so the shoulder blade slides round. Ten of those, have a rest of thirty seconds, do it again, and once more if you've got it in you.
[2:10] If it pinches at the front lower your arm.</4> <5>And wall slides to finish. Forearms on the wall, slide up into a Y, lift off a fraction, and down over a count of four. Eight times, that's all. Morning and evening for this one.
[2:36] Stop if you get pins and needles.</5> No overhead pressing till I've seen you again. Three weeks, okay?`,
    taught: [
      { name: /external rotation/i, dose: { sets: 2, reps: 15, rest: 60 } },
      { name: /internal rotation/i, dose: { sets: 2, reps: 15, rest: 60 } },
      { name: /row/i, dose: { sets: 3, reps: [10, 12], hold: 2 } },
      { name: /punch plus/i, dose: { sets: [2, 3], reps: 10, rest: 30 } },
      { name: /wall slide/i, dose: { reps: 8 }, tempo: '4-x-x-x' },
    ],
    notTaught: [/overhead press/i],
  },
  {
    title: 'dumbbells at home with levels',
    text: `[0:00] Hiya, it's me again, in the garage. Two dumbbells, or two tins of beans. There's always a beginner number and a normal number, don't be a hero. It takes about half an hour with the chat.
[0:18] <1>So, goblet squats. One weight, hold it under your chin, feet a bit wider than your hips, sit down between the knees, chest up. Beginners eight, otherwise twelve. We'll do three sets of everything in this first part, forty-five seconds between.
[0:44] Heels down, knees the same way as your toes.</1> <2>Bent over rows. Hinge forward, back flat like a table, pull the weights to your hips. Eight again if you're newer to this, twelve if not. Three sets of course.
[1:06] If your back's a worry put one hand on a chair.</2> <3>Floor press next, lying down, elbows at forty-five degrees, press up till the arms are straight and come down till the elbows kiss the floor. Ten is the number. If you've only got tins do twenty.
[1:32] Wrists over elbows.</3> Postman. Hang on. Right, where was I.
[1:42] <4>Part two, and it's a pair. Reverse lunges and lateral raises, one after the other, no rest. The lunges first. Step back, drop the knee, push through the front foot, six each leg.
[2:02] Hold a wall if you need to.</4> <5>Then straight up for your lateral raises, arms out to the sides as far as shoulder height, thumbs slightly up. Ten. Not higher than the shoulders, that's where people get pinched.
[2:24] Two rounds of the pair, and a minute off after each round.</5> <6>Finish with dead bugs, no weights. On your back, arms up, knees up, lower opposite arm and leg, and return. Breathe out each time. Twelve in total so six a side.
[2:50] Keep the lower back down.</6> I'll add the renegade row when you lot stop moaning. Ta-ra.`,
    taught: [
      { name: /goblet squat/i, dose: { sets: 3, reps: 12, rest: 45 } },
      { name: /row/i, dose: { sets: 3, reps: 12, rest: 45 } },
      { name: /floor press/i, dose: { sets: 3, reps: 10, rest: 45 } },
      { name: /lunge/i, dose: { sets: 2, reps: 6, sides: true, rest: 60 }, scheme: 'superset' },
      { name: /lateral raise/i, dose: { sets: 2, reps: 10, rest: 60 }, scheme: 'superset' },
      { name: /dead ?bug/i, dose: { reps: 6, sides: true } },
    ],
    notTaught: [/renegade/i],
  },
]
