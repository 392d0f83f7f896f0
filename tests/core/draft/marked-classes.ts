/**
 * Invented classes with the stretch of each exercise marked in the text: <1>…</1> is where exercise 1 is taught, a second
 * pair of the same number where the class comes back to it. Written before the reader was widened on them, so that they
 * sound as classes do; their first figures stand in marked-classes.test.ts.
 */
import type { MarkedClass } from './score-marked.ts'

export const MARKED_CLASSES: readonly MarkedClass[] = [
  {
    title: 'mat Pilates',
    text: `[0:00] Morning all, sit wherever you like. My voice has gone a bit so bear with me. We've got our usual forty minutes, and I promised you the side lying stuff because we ran out of time last week. So bridging, the hundred, some leg work, then onto our sides and a bit of swimming to finish.
[0:26] Right, down onto your backs. <1>We'll kick off with bridging. Feet hip distance, knees bent, arms long by your sides. Tip the tailbone, peel your spine off the mat one bone at a time until you're up on your shoulder blades, breathe in at the top, and melt it all back down on a sigh. I want eight of those. Actually no, you look sleepy, let's have ten.
[1:00] Keep the weight even in both feet. If the hamstrings grab, walk your heels nearer. Lovely, Pam. Last couple.</1> And hug your knees in, have a little rock.
[1:18] <2>So then it's the hundred. Legs in tabletop, or leave the feet down, that's fine. Head and shoulders curl up, reach long past your hips, and pump the arms. In for five, out for five, and we do that ten times through, which is how you get to a hundred. If your neck starts complaining put your head down and keep the arms going.
[1:50] Ribs soft, don't let the tummy dome.</2> Good. Rest the head, roll it side to side. My other class calls this bit the nicest part.
[2:05] <3>Stay there for single leg stretch. Head up if you like, one knee in with both hands on the shin, the other leg long and low, and change, and change. Pelvis dead still. Exhale as you swap. Eight each leg I'd say, nice and slow.
[2:32] If your lower back lifts off, take the long leg higher. Don't yank the knee.</3> <4>Now roll on to your right side, long line, head on your arm. These are the side kicks. Top leg floats to hip height, flex the foot, kick it forward twice, then sweep it back with a pointed toe. Waist stays lifted off the floor. You're doing twelve of these before we change over.
[3:05] Don't let the top hip roll back. Smaller kick if you're wobbling.</4> <5>Bend both knees, heels together, heels in line with your bum. Open the top knee without the pelvis moving, and close. That's the clam, everybody's favourite. Fifteen. And then hold it open at the top for ten seconds. Burn, burn.
[3:38] It's in the side of your bottom you should feel it, not your back.</5> Roll through your back to the other side please. Watch out for each other. <4>Side kicks on this one, leg up, kick kick and sweep, twelve again. Keep that waist up.</4> <5>And clams, fifteen, and your little hold.</5>
[4:05] Whoever's phone that is, tell them we're busy. <6>Front now, lie on your tummy, forehead on your hands to start and then reach the arms overhead. Swimming. Lift opposite arm and leg, and flutter them, small and quick, breathing all the time. We'll go for thirty seconds, have a breather, then thirty more.
[4:40] Look down at the mat so the neck stays long. If it pinches in your lower back keep the legs down.</6> And push back on your heels, let it all go. Teasers we'll leave for another day. See you Thursday.`,
    taught: [
      { name: /bridg/i, dose: { reps: 10 } },
      { name: /hundred/i, dose: { reps: 10, unit: 'cycle' } },
      { name: /single leg stretch/i, dose: { reps: 8, sides: true } },
      { name: /side kick/i, dose: { reps: 12, sides: true } },
      { name: /clam/i, dose: { reps: 15, hold: 10, sides: true } },
      { name: /swimming/i, dose: { sets: 2, work: 30 } },
    ],
    notTaught: [/teaser/i],
  },
  {
    title: 'barbell day, American',
    text: `[0:00] What's up everybody, coach here. Lower body day. We got a lot to get through so quit chalking and listen up. We're hitting front squats for the main work, then RDLs paired with box jumps, then split squats, and I'll finish you off with a sled push if the turf's free.
[0:22] I hit three fifteen for a double on Friday, thanks for asking. <1>Front squat. Bar in the rack position, elbows high, fingertips is fine. Brace, sit straight down between your hips, and drive those elbows up on the way out. What we've got today is a descending set, so it's five, four, three, two, one, adding a little weight each time, and you're gonna take two full minutes between.
[0:58] If your upper back rounds, that's your set, rack it. Nobody squats outside the safeties. Knees out, chest proud. Good, good.</1> I see you, Marcus. Okay, strip the bars down to about sixty percent.
[1:20] <2>So A1 here is the RDL. Bar at your hips, soft knees, shove your butt back till you feel the hamstrings, flat back the entire time, then squeeze up tall. Take three counts down, no pause, and come up fast. You're getting eight on these.
[1:50] Keep it glued to your thighs.</2> <3>And right into box jumps, that's A2. Stand a foot away, swing the arms, land quiet with the whole foot on the box, stand it up, step down. Do not jump down. Just four of those, I want 'em crisp.
[2:14] Land with your knees over your toes.</3> So you go back and forth, that's three rounds, and ninety seconds once you've done both.
[2:30] Water. Thirty seconds, that's all you get. <4>Alright, rear-foot elevated split squats. Back foot laces down on the bench, front foot far enough out, drop the back knee straight down. Dumbbells by your sides. I've got ten a leg written here. You know what, after those jumps make it eight a leg. Still three sets.
[3:05] Rest a minute between legs if you have to. Front heel stays heavy. If the knee hurts go to a regular split squat on the floor.</4> Turf's taken so no sled, sorry.
[3:25] <5>Let's finish with a plank, elbows under shoulders, squeeze everything you own. Hold as long as you can with good form. Drop when your hips sag.</5> Done. Go eat something.`,
    taught: [
      { name: /front squat/i, dose: { reps: [1, 5], rest: 120 }, scheme: 'ladder' },
      { name: /rdl|romanian/i, dose: { sets: 3, reps: 8, rest: 90 }, scheme: 'superset', tempo: '3-x-X-x' },
      { name: /box jump/i, dose: { sets: 3, reps: 4, rest: 90 }, scheme: 'superset' },
      { name: /split squat/i, dose: { sets: 3, reps: 8, sides: true, rest: 60 } },
      { name: /plank/i },
    ],
    notTaught: [/sled/i],
  },
  {
    title: 'boxing fitness',
    text: `[0:00] Evening you lot. Wraps on, gloves on, no rings please. Tonight we're on a clock, so it's three minute rounds like the real thing, with a minute to breathe. There's bag work, a bit of pad work without the pads, then floor.
[0:22] <1>Get warm first with some skipping. Rope or no rope, I don't mind. Stay on the balls of your feet, wrists do the turning, little jumps. Two minutes of that. Shoulders down. If the calves go, march it out.</1> Right, ropes down.
[0:46] <2>First round is jab cross. Left foot forward if you're right handed, hands by your cheeks, snap the lead hand out and straight back, then turn the back hip and throw the other one. Breathe out on each punch. Three minutes on the clock, off you go.
[1:12] Don't lock that elbow out. Bring the hand home to your face every time. Thirty seconds left, keep the hands up. Ten. And time. One minute off.</2>
[1:35] <3>Round two we add the slip. So jab, cross, then bend the knees and slide your head outside an imaginary punch, one side then the other. It comes from the legs. Same again, three minutes, minute's rest.
[2:00] Eyes up, never look at the floor. If you get dizzy stay tall and only punch.</3> Anyone need water? Dave, you're bleeding on my mat, there's plasters behind the desk.
[2:18] <4>Next up we've got the body hook. Bend your knees so your shoulder's level with the target, elbow tucked, rip it round to the ribs. Twenty on the left, then twenty on the right. We'll do that three times.
[2:44] Turn the foot with it or your knee takes the twist.</4> Gloves off, find a space on the floor.
[2:56] <5>Press-ups, everybody loves them. Hands wider than your shoulders, body like a board, chest to the floor or as near as you get. On your knees is no shame. I want ten, then we drop to eight, then six, then four, and that's the lot.
[3:22] Hips don't sag.</5> <6>Flip over. Sit-ups with a punch, feet flat, roll up, one two at the top, and roll down slowly. Forty seconds on, twenty off, four times round. Chin off your chest. If your back arches put your hands behind your thighs.</6>
[3:52] <7>And one to cool you off, Russian twists, no weight, feet down, lean back a touch and turn from side to side. Let's say thirty all together. Slow.</7> Well done, that's your lot. Next week sparring, maybe.`,
    taught: [
      { name: /skipping/i, dose: { work: 120 } },
      { name: /jab cross/i, dose: { work: 180, rest: 60 } },
      { name: /slip/i, dose: { work: 180, rest: 60 } },
      { name: /hook/i, dose: { sets: 3, reps: 20, sides: true } },
      { name: /press[- ]?up/i, dose: { reps: [4, 10] }, scheme: 'ladder' },
      { name: /sit[- ]?up/i, dose: { sets: 4, work: 40, rest: 20 }, scheme: 'interval' },
      { name: /russian twist/i, dose: { reps: 30 } },
    ],
    notTaught: [/sparring/i],
  },
  {
    title: 'chair yoga',
    text: `[0:00] Namaste and welcome, friends. Find a chair that doesn't roll. If you've had an operation since I saw you last, come and tell me quietly. There's nowhere to get to this morning.
[0:20] Let the feet find the floor. <1>We begin as always with breathing, just sitting tall, a hand on the belly, in through the nose and out through the nose, the out breath a little longer. Let's take six rounds of that in your own time. No straining for it.</1>
[0:48] Beautiful. <2>Seated cat and cow. Hands on your knees, as you breathe in draw the chest through and look up a little, as you breathe out round the back and drop the chin. Follow the breath. Five or six of those would be plenty.
[1:12] Smaller if your neck is sore.</2> I was at a workshop with a teacher of eighty-four who still teaches daily, can you imagine. <3>Now the side stretch. Right hand holds the seat, left arm floats up and over, grow long before you lean. Both sitting bones stay heavy. Three breaths here.
[1:42] Come up through the middle, change arms, and three breaths this way too. Don't collapse on to the elbow.</3>
[1:58] <4>From here we'll twist. Right hand to the outside of the left knee, other hand behind you on the chair. Lengthen as you breathe in, turn as you breathe out, eyes last of all. Stay for four breaths. And unwind. Let me say again, with osteoporosis stay small in this one.
[2:26] And the other side, four breaths.</4> Feel the difference? <5>Eagle arms. Cross the right elbow over the left, wrap if it happens, and lift the elbows an inch. Between your shoulder blades is where you feel it. Twenty seconds or so, then undo them, and swap which one's on top.
[2:56] Give yourself a hug instead if the shoulders say no.</5> <6>Then a warrior. Turn to sit sideways, right thigh along the seat, left leg stretches behind you, arms up if you'd like them up. Hold on to the chair back with one hand. Five breaths each side, moving round slowly when you're ready.
[3:28] Front knee over the ankle.</6> <3>Before we finish, that side stretch again, right arm up and over, two breaths only, and the left.</3> Hands together. We shan't do the sun salutation today, it's too warm. Thank you.`,
    taught: [
      { name: /breathing/i, dose: { reps: 6, unit: 'cycle' } },
      { name: /cat/i, dose: { reps: [5, 6] } },
      { name: /side (?:stretch|bend)/i, dose: { reps: 3, unit: 'breath', sides: true } },
      { name: /twist/i, dose: { reps: 4, unit: 'breath', sides: true } },
      { name: /eagle arms/i, dose: { hold: 20, sides: true } },
      { name: /warrior/i, dose: { reps: 5, unit: 'breath', sides: true } },
    ],
    notTaught: [/salutation/i],
  },
  {
    title: 'running club drills',
    text: `[0:00] Gather in, gather in. It's wet on the back bend so stay in lane two and three. Tuesday is form night. Who raced Sunday? Then half of everything for you. I ran a forty-one minute ten k when I was your age, those days are gone.
[0:22] <1>So, leg swings on the rail to get going. Side on, one hand on the fence, swing the outside leg forward and back like a pendulum, tall all the time. Ten each leg. Don't force the height.</1> <2>Then high knees. Over twenty metres, up on your toes, knee to hip height, quick feet, arms brisk. There and back twice.
[0:50] You're not leaning back. If your shins are niggling, walk it.</2> Walk back to the cone. <3>Butt kicks now, or heel flicks, whatever you call them. Knees point down, heel whips up underneath you. Same distance, just the once this time.</3>
[1:12] <4>A skips. Everyone's favourite to get wrong. It's a skip, knee drives up, foot strikes down under your hips, opposite arm. Thirty metres of those, walk back, and we'll do it three times.
[1:34] Toes up towards the shin. Quiet feet.</4> Someone asked about B skips, no, learn these first.
[1:46] <5>Right, main bit. Strides. Build up over the first twenty, hold your fast relaxed pace, then let it wind down, don't slam on the brakes. Eighty metres each, and we're doing six of them with a walk back for recovery. So about ninety percent, not flat out.
[2:14] Hands loose, jaw loose. If anything grabs in the hamstring you stop there and then.</5> Good. Jog round to the hill.
[2:30] <6>Hill sprints. Short and steep. Eyes up, drive the arms, push the ground away behind you. Ten seconds each, walk down, full recovery, let's say two minutes. I had eight down, we'll do six because of the rain.
[2:58] Watch for dogs and wet leaves.</6> To finish, easy jog back and <7>a calf stretch against the wall. Back heel down, toes straight, lean in till it pulls. Thirty seconds a side.</7> Same time Thursday, we'll do the four hundreds.`,
    taught: [
      { name: /leg swing/i, dose: { reps: 10, sides: true } },
      { name: /high knees/i, dose: { sets: 2, metres: 20 } },
      { name: /butt kick/i, dose: { sets: 1, metres: 20 } },
      { name: /a skip/i, dose: { sets: 3, metres: 30 } },
      { name: /stride/i, dose: { sets: 6, metres: 80 } },
      { name: /hill sprint/i, dose: { sets: 6, work: 10, rest: 120 } },
      { name: /calf stretch/i, dose: { hold: 30, sides: true } },
    ],
    notTaught: [/b skip/i, /four hundred/i],
  },
  {
    title: 'living room tabata',
    text: `[0:00] Hi guys, welcome back to the channel. No equipment today, just you and about six feet of floor. It's a tabata, so twenty seconds of work, ten seconds of rest. We have four moves and we go through the whole lot twice. Your moves are squat jumps, mountain climbers, reverse lunges and hollow holds. I'll show you each one first.
[0:28] <1>Squat jumps. Feet shoulder width, sit the hips back, and explode up, land soft through the whole foot. If jumping isn't your thing today do a fast squat to your toes. Knees track over the toes.</1>
[0:48] <2>Mountain climbers. High plank, hands under the shoulders, drive one knee in at a time. Hips stay low, no bouncing. Put your hands on a couch to make it easier.</2>
[1:06] <3>Reverse lunges, alternating. Step back, drop the knee toward the floor, front heel down, push back to standing. Chest up. Hang on to a chair if you're wobbly.</3> And the last one.
[1:22] <4>Hollow hold. On your back, press the lower back down, reach arms and legs long and hover. Bend your knees if your back pops up.</4> Okay, that's the demo. Ready? Here we go, round one.
[1:38] <1>Squat jumps, go! Nice and low. Breathe. Five, four, three, two, one, rest.</1> <2>Climbers, get down there. Go. Drive, drive, drive. Halfway. And rest.</2> <3>Lunges. Step it back, keep it tall, you got this. Switch legs every time. Three, two, one. Rest.</3> <4>On your back, hollow hold. Long arms, squeeze. Breathe, don't hold it. And rest.</4>
[2:40] That's one round. Take a minute and shake it out. My neighbor thinks I'm killing somebody up here.
[2:56] Round two, last round. <1>Squat jumps, up, go! Soft landings. Keep pushing. Rest.</1> <2>Climbers. Hands under those shoulders. Go go go. Rest.</2> <3>Lunges. Chest up. Almost home. Rest.</3> <4>Hollow, final one. Lower back glued down. Done!</4>
[3:50] Woo. <5>Let's bring it down with a child's pose. Knees wide, sit back on your heels, forehead to the mat. Stay here for about a minute.</5> Burpees are coming on Friday, so don't skip it.`,
    taught: [
      { name: /squat jump|jump squat/i, dose: { sets: 2, work: 20, rest: 10 }, scheme: 'circuit' },
      { name: /climber/i, dose: { sets: 2, work: 20, rest: 10 }, scheme: 'circuit' },
      { name: /lunge/i, dose: { sets: 2, work: 20, rest: 10 }, scheme: 'circuit' },
      { name: /hollow/i, dose: { sets: 2, hold: 20, rest: 10 }, scheme: 'circuit' },
      { name: /child'?s pose/i, dose: { hold: 60 } },
    ],
    notTaught: [/burpee/i],
  },
]
