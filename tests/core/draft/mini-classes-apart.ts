/** A second set of short invented classes, written after the rules and tried once before any rule was changed for them. */
import type { MiniClass } from './mini-classes.ts'

export const MINI_CLASSES_APART: readonly MiniClass[] = [
  {
    title: 'chair class for older adults, chatty',
    transcript: `[0:00] Good morning my lovelies. Did you all survive the wind? My bins ended up in the next street. Right, shuffle to the front half of your chair.
[0:20] We begin with ankle circles. Lift one foot just off the floor and draw a big slow circle with your toes. Eight one way and eight the other, then swap feet. If lifting is too much leave your heel on the floor.
[0:45] Lovely. Now shoulder rolls. Sit up nice and tall. Roll your shoulders up, back and down. Ten of those. Don't poke your chin forward.
[1:05] And relax. How are we doing? Barbara, I love that cardigan. Okay, sit to stands, everyone's favourite. Feet under your knees, lean forward and stand up. Hold on to the chair arms if you need to. Breathe out as you come up. We'll do six, have a rest, and another six.
[1:40] If you feel dizzy when you stand, sit straight back down. And rest. Now stay standing, hold on to the back of the chair, and we'll do some heel raises. Rise up on your toes, count of two, and slowly lower. Twelve. Keep hold the whole time.
[2:15] Next we're going to try a one leg stand. Keep both hands on the chair. Shift your weight over and float one foot off the floor. Ten seconds each leg. Only take a hand away if you feel steady.
[2:45] Super. Sit down carefully. You can do the heel raises while the kettle boils. See you next week.`,
    taught: [
      { id: 'ankle-circle', name: /ankle circle/i, said: 'Eight one way' },
      { id: 'seated-shoulder-roll', name: /shoulder roll/i, said: 'Ten of those' },
      { id: 'sit-to-stand', name: /sit to stand/i, said: null },
      { id: 'heel-raise', name: /heel raise/i, said: null },
      { id: 'single-leg-stand', name: /one leg stand/i, said: 'Ten seconds each leg' },
    ],
    notTaught: [],
  },
  {
    title: 'American dumbbell circuit with stations',
    transcript: `[0:00] What's up everybody, it's a five station circuit, forty seconds of work, twenty seconds of rest, three rounds. Goblet squats, push-ups, dumbbell rows, glute bridges and jumping jacks.
[0:20] Station one is the goblet squat. Hold one dumbbell at your chest, feet just outside hip width. Sit your hips down and back, then drive through your heels. Keep your knees tracking over your toes. If it's too heavy, drop the weight.
[0:50] Station two, push-ups. Hands under your shoulders, body in a straight line. Lower your chest to the floor and press away. Knees down is totally fine.
[1:15] Station three, dumbbell row. Hinge at the hips, flat back. Pull the weights to your ribs and squeeze. Don't round your back.
[1:40] Four is glute bridges. Lie down, feet flat, knees bent. Drive your hips up and squeeze at the top. Don't arch your back.
[2:05] And the last one, jumping jacks. Feet together, arms by your sides. Jump out and clap overhead. Land soft. If jumping bugs your knees step it side to side.
[2:30] That's round one. Grab some water. Round two, goblet squats. Go. Chest up, nice. And switch, push-ups. Great work.`,
    taught: [
      { id: 'goblet-squat', name: /goblet squat/i, said: 'forty seconds of work' },
      { id: 'press-up', name: /push[- ]?ups?/i, said: 'forty seconds of work' },
      { id: 'bent-over-row', name: /dumbbell row/i, said: 'forty seconds of work' },
      { id: 'glute-bridge', name: /glute bridge/i, said: 'forty seconds of work' },
      { id: 'jumping-jack', name: /jumping jack/i, said: 'forty seconds of work' },
    ],
    notTaught: [],
  },
  {
    title: 'mat class, unpunctuated, names behind the set-up',
    transcript: `[0:00] good evening everyone roll out your mat we're going to work from the middle tonight so nothing fancy
[0:15] lie on your back with your knees bent and your arms by your sides breathe in and as you breathe out press your lower back into the mat and let it go this is your pelvic tilt do ten of those slowly
[0:45] next up the dead bug bring your legs to table top and your arms up to the ceiling lower opposite arm and leg away and come back don't let your back arch eight each side and breathe out as you reach
[1:15] okay roll over onto your front for the superman arms long in front lift one arm and the opposite leg hold for three and lower five each side if your back pinches just lift the arms
[1:50] push back onto all fours bird dog reach one leg back and the opposite arm forward keep your hips level six each side
[2:20] and sit back into child's pose let your forehead rest on the mat stay for five breaths well done`,
    taught: [
      { id: 'pelvic-tilt', name: /pelvic tilt/i, said: 'ten of those' },
      { id: 'dead-bug', name: /dead bug/i, said: 'eight each side' },
      { id: 'superman', name: /superman/i, said: 'five each side' },
      { id: 'bird-dog', name: /bird dog/i, said: 'six each side' },
      { id: 'childs-pose', name: /child's pose/i, said: 'five breaths' },
    ],
    notTaught: [],
  },
  {
    title: 'names nobody listed and second names',
    transcript: `[0:00] Hello hello. Four things today and none of them need kit.
[0:10] The first one I call the garden gate. Stand side on to a wall with one hand on it. Lift your outside knee and swing it open like a gate, then close it. Eight on each leg. Stand tall, don't lean.
[0:40] Second, the penguin walk, or heel walk as some people call it. Lift your toes off the floor and walk on your heels. Ten steps there and ten back. Stay near the wall in case you wobble.
[1:05] Then we have wall angels. Back against the wall, feet a step away. Slide your arms up the wall and down. Ten slow ones. If your shoulder pinches don't go so high.
[1:35] I once knocked a picture down doing that. Last exercise, the teapot stretch. One hand on your hip, the other arm up. Lean over to the side and hold for twenty seconds, both sides. Don't hold your breath.
[2:05] We won't do star jumps, the neighbours complain. Bye bye.`,
    taught: [
      { id: null, name: /garden gate/i, said: 'Eight on each leg' },
      { id: 'heel-walk', name: /penguin walk|heel walk/i, said: null },
      { id: 'wall-slide', name: /wall angel/i, said: 'Ten slow ones' },
      { id: null, name: /teapot stretch/i, said: 'hold for twenty seconds' },
    ],
    notTaught: [/star jump/i],
  },
]
