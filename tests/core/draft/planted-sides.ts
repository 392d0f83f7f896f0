/** Test data: short classes of our own, some with a side that is wrong on purpose, some that are right and nearly look wrong. */

/** The same side after the change, one side for both turns, or one side only of a dose for each. */
export const WRONG_SIDES: readonly string[] = [
  `[0:00] Okay everybody, next one is the standing hip abduction. Hold the back of the chair. We'll start with the right leg. Lift it out to the side and bring it in. Ten each leg.
[0:30] Stand tall, don't lean. Lovely work. And switch legs. Right leg out to the side again now, nice and slow.
[1:00] Toes point forward. Breathe. And that's ten. Shake it out.`,
  `[0:00] First exercise is the half kneeling press. Left side first. One knee down, bell at your shoulder, press it up. Three sets of eight each side.
[0:30] Ribs down, squeeze your glute. Now the other side. Left side, same again. Press it up.
[1:00] Good. Breathe out as you press. And rest.`,
  `[0:00] Next exercise is the side plank. On the right first. Elbow under the shoulder, lift your hips. Thirty seconds each side.
[0:30] Long line from head to heel. And swap sides. On the right, hips up.
[1:00] Hold it, hold it. Don't let the hips sag. And down.`,
  `[0:00] Next up is the split squat. Right leg first. Drop the back knee straight down and push up. Eight each leg, two sets.
[0:30] Chest up. Front heel stays down. Okay, right leg again. Eight more.
[1:00] Push the floor away. Nice and tall. Done.`,
  `[0:00] First exercise is the clamshell. Lie down on your side. Lift your left knee and lower it. Twelve each side.
[0:30] Keep the hips stacked. Your left knee opens like a book.
[1:00] Small movement. And relax.`,
  `[0:00] Next exercise is the seated knee extension. Sit tall. Straighten your right leg. Squeeze the thigh, lower slowly. Ten on each leg.
[0:30] Toes up. Don't rush it. Right knee nice and straight.
[1:00] Breathe out as it goes up. And rest.`,
  `[0:00] Our next exercise is the single arm row. Lean on the bench, start on the left. Pull your elbow back past your ribs. Ten each arm, three sets.
[0:30] Flat back. Don't twist. And change arms. Left arm, pull.
[1:00] Slow on the way down. Breathe out as you pull. And rest.`,
  `[0:00] Now the quad stretch. Hold the wall. Left leg first, take hold of your foot behind you. Twenty seconds each side.
[0:30] Knees together. Stand tall. Second side now. Left leg again.
[1:00] Tuck your tail. Breathe. And let go.`,
  `[0:00] Next is the windmill. Begin with your right side, bell overhead. Push the hip out and slide the hand down. Five each side.
[0:30] Eyes on the bell. Now the other side. On the right, five again.
[1:00] Slow and steady. And park the bell.`,
  `[0:00] Next exercise is the figure four stretch. Lie on your back. Right ankle over the knee, and draw the legs in. Five breaths each side.
[0:30] Keep your head down. Right ankle stays crossed. Let the hip soften.
[1:00] One more breath. And release.`,
  `[0:00] Next we have step ups. Right leg first. Step up, stand tall, step down. Twelve on each leg.
[0:30] Whole foot on the step. Knee over your toes. Same again, right leg.
[1:00] Don't push off the back foot. And finished.`,
  `[0:00] The next exercise is the standing hip extension. Hold on. Left leg goes first. Take it straight back and squeeze. Ten each leg, twice.
[0:30] Don't arch your back. And swap legs. Left leg back, squeeze.
[1:00] Stay tall. And rest.`,
  `[0:00] Right then, next exercise is the kettlebell windmill. Weaker side first, so left arm up. Hinge and slide down. Four reps each side.
[0:30] Look at the bell the whole way. Left arm still up. Good.
[1:00] That's your four. Left side once more. And put it down.`,
  `[0:00] Next up, lateral lunges. Start on your right, step out wide and sit back into it. Eight each side.
[0:30] Other foot stays flat. Heel down. Other side. Step out to the right, sit back, and push home.
[1:00] Right leg again. Keep the chest proud. And done.`,
  `[0:00] Next exercise is the heel slide. This is for both knees, so operated leg or not, right leg first. Slide the heel in and out. Ten each leg.
[0:30] Only as far as it's comfortable. Change legs. And right leg, slide it in.
[1:00] Nice and smooth. And relax.`,
  `[0:00] Next is the pigeon stretch. Right shin across in front. Fold forward over it. Five breaths each side.
[0:30] Hips square. Right hip heavy. Let the breath go.
[1:00] One more. And walk back up.`,
  `[0:00] Now the bow and arrow. Band in both hands, left arm out straight, draw back like an archer. Twelve each side, two sets.
[0:30] Squeeze behind the shoulder. And again, left arm out.
[1:00] Don't let the band snap. And rest.`,
  `[0:00] Next exercise is the single leg bridge. Left leg first. Foot flat, other leg long, lift the hips. Ten each leg.
[0:30] Hips level. Breathe out as you lift. Okay, left leg, second set.
[1:00] Push through the heel. And rest.`,
]

/** Right as they are: nothing may be found of sides. */
export const RIGHT_SIDES: readonly string[] = [
  `[0:00] Okay everybody, next one is the standing hip abduction. Hold the back of the chair. We'll start with the right leg. Lift it out to the side and bring it in. Ten each leg.
[0:30] Stand tall, don't lean. Lovely work. And switch legs. Left leg out to the side now, nice and slow.
[1:00] Toes point forward. Breathe. And that's ten. Shake it out.`,
  `[0:00] First exercise is the half kneeling press. Left side first. One knee down, bell at your shoulder, press it up. Three sets of eight each side.
[0:30] Ribs down, squeeze your glute. Now the other side. Same again. Press it up.
[1:00] Good. Left side again for your second set. Breathe out as you press. And the other side. And rest.`,
  `[0:00] Next exercise is the side plank. Lie on your right side. Elbow under the shoulder, lift your hips. Thirty seconds each side.
[0:30] Long line from head to heel. And roll over.
[1:00] Hold it, hold it. Don't let the hips sag. And down.`,
  `[0:00] Next up is the split squat. Right leg in front. Drop the back knee straight down and push up. Eight each leg, two sets.
[0:30] Chest up. Front heel stays down. Okay, that's the right done, change legs.
[1:00] Push the floor away. Nice and tall. Right, done.`,
  `[0:00] Next exercise is the bird dog. Right hand and left knee stay down, reach the other two long. Ten each side.
[0:30] Right, hips level. Now left hand, right leg. Five left.
[1:00] Breathe out as you reach. And rest.`,
  `[0:00] Our next exercise is the single arm row. Lean on the bench with your right hand. Pull your elbow back past your ribs. Ten each arm, three sets.
[0:30] That's right, flat back. All right, five left. And change arms.
[1:00] Slow on the way down. Breathe out as you pull. And rest.`,
  `[0:00] Now the quad stretch. Hold the wall. Left leg first, take hold of your foot behind you. Twenty seconds each side.
[0:30] Knees together. Stand tall. Second side now.
[1:00] Left hand on the wall this time. Breathe. And let go.`,
  `[0:00] Next is the windmill. Begin with your right side, bell overhead. Push the hip out and slide the hand down. Five each side.
[0:30] Eyes on the bell. Now the left.
[1:00] Slow and steady. And park the bell right by your foot.`,
  `[0:00] Next exercise is the seated twist. Sit tall. Turn to the right, and back to the middle. Then to the left. Six each way.
[0:30] Grow tall as you turn. Right hand behind you. Breathe out as you go round.
[1:00] And come back to the middle.`,
  `[0:00] Next we have step ups. Right leg first for ten, then left for ten. Step up, stand tall, step down.
[0:30] Whole foot on the step. Knee over your toes. Any time you're ready, swap.
[1:00] Right leg again when you've both done. And finished.`,
  `[0:00] The next exercise is the side lying leg raise. Lie on your left side with your head on your arm. Lift the top leg. Twelve each side.
[0:30] Toes point forward. Don't roll back. And over to the other side. On your right side now.
[1:00] Same again, twelve. And rest.`,
  `[0:00] Next exercise is the tandem stand. One foot in front, right foot first. Hold on to the rail with your left hand. Ten seconds each side.
[0:30] Look straight ahead. And change over. Right hand on the rail if you like.
[1:00] And come back. Well done.`,
  `[0:00] Right then, next exercise is the kettlebell windmill. Weaker side first, so left arm up. Hinge and slide down. Four reps each side.
[0:30] Look at the bell the whole way. And switch hands.
[1:00] Right arm up now. And put it down.`,
  `[0:00] Next up, lateral lunges. Start on your right, step out wide and sit back into it. Eight each side, alternating.
[0:30] Heel down. Right, left, right, left.
[1:00] Keep the chest proud. And done.`,
  `[0:00] Next exercise is the heel slide. Right leg first. Slide the heel in and out. Ten each leg.
[0:30] Only as far as it's comfortable. And that's right leg done. Left leg, slide it in.
[1:00] Nice and smooth. And relax.`,
  `[0:00] Next is the pigeon stretch. Right shin across in front. Fold forward over it. Five breaths each side.
[0:30] Hips square. Breathe. And we'll do the second side, so left shin across.
[1:00] One more. And walk back up.`,
  `[0:00] Now the bow and arrow. Band in both hands, left arm out straight, draw back like an archer. Twelve each side, two sets.
[0:30] Squeeze behind the shoulder. Turn around and do the other way.
[1:00] Don't let the band snap. And rest.`,
  `[0:00] Next exercise is the side bend. Stand right up against the wall. Slide your left hand down your leg, and come up. Then your right. Ten each side.
[0:30] Right. Shoulders back. What have we got left, four.
[1:00] And that's it, right on time.`,
  `[0:00] Next exercise is the lying hip rotation. Knees bent. Drop both knees to the left, and come back to the middle. Then over to the right. Six each side.
[0:30] Left shoulder stays heavy. Breathe out as they go.
[1:00] And back to the middle.`,
  `[0:00] Next we have the one arm press. Bell in your right hand to begin. Press it up, ribs down. Five each arm.
[0:30] Swap hands by putting it down. Press.
[1:00] Right hand again for the second lot, five, and swap. And park it.`,
]
