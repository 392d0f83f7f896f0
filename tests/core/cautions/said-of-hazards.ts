/**
 * What instructors say that covers a hazard, and near misses that do not.
 * Our own sentences, written before the word lists were tried on them; the trade's everyday English, common practice, no source.
 */
import type { HazardSlug } from '../../../core/cautions/hazard-slugs.ts'

interface Sayings {
  covers: readonly string[]
  misses: readonly string[]
}

export const SAID = {
  'neck-pull': {
    covers: [
      "Your hands are only there to hold the head, don't drag it up with you.",
      'no yanking on the neck please the tummy does the lifting',
      'If your neck starts to ache, pop your head down and have a rest.',
      "Elbows wide and chin off the chest, your head isn't a handle.",
    ],
    misses: [
      'Pull the elbow towards your back pocket.',
      'Long neck, eyes on the ceiling.',
      'Hands behind your head, knees bent.',
    ],
  },
  'inverted-head-down': {
    covers: [
      'Anyone with glaucoma, keep your head up for this one.',
      'if your blood pressure is up dont fold all the way down',
      "Don't let your head go below your knees if it makes you dizzy.",
      'Head level with your hips is plenty.',
    ],
    misses: ['Let your head hang and sigh.', 'Keep your eyes on the wall.', 'Head and hips rise together.'],
  },
  'loaded-spinal-flexion': {
    covers: [
      'The moment your back starts rounding, the set is over.',
      'keep your back flat all the way down and all the way up',
      "Don't let that lower back curl under.",
      'No cat backs, chest proud.',
    ],
    misses: [
      'Round your back up like a cat.',
      'Lean back a little and drive the elbows.',
      'Back squats next, three sets of five.',
    ],
  },
  'breath-hold': {
    covers: [
      "Whatever you do, don't hold your breath.",
      'keep breathing as you squeeze',
      'Blow out as you stand up.',
      'If you can count out loud you are breathing.',
    ],
    misses: ['Hold for two breaths.', 'Take a big breath and brace.', 'Hold the chair with both hands.'],
  },
  'fall-risk': {
    covers: [
      'One hand on the back of the chair the whole time.',
      'keep hold of the worktop with your fingertips',
      'If you wobble, pop the other foot down.',
      'Have the wall within reach just in case.',
      'Use the arms of the chair if you need them.',
    ],
    misses: [
      'Hold the dumbbells by your sides.',
      'Sit at the front of the seat, feet flat.',
      'Keep holding that plank.',
    ],
  },
  'dizziness-rise': {
    covers: [
      'If you feel light-headed when you stand, sit straight back down.',
      'stand still for a moment before you move off',
      'Roll up slowly, head last.',
      'Get your bearings at the top before the next one.',
    ],
    misses: ['Stand up tall and squeeze.', 'Sit down slowly, three seconds.', 'Roll slow and press quick.'],
  },
  'bone-health': {
    covers: [
      'If you have osteoporosis, make the turn small.',
      'anyone whos been told their bones are thin just sit tall for this one',
      'If you have ever had a fracture in your back, skip the bend.',
    ],
    misses: ['Sit tall on your sit bones.', 'Roll down one bone at a time.', 'Lead with your breastbone.'],
  },
  'supine-pregnancy': {
    covers: [
      'If lying flat makes you feel sick or faint, roll onto your left side.',
      'prop yourself up on a couple of pillows so youre not flat',
      "After about twenty weeks don't lie flat for long.",
    ],
    misses: ['Lie on your back, feet flat.', 'Roll onto your side and push up.', 'Put a pillow under your head.'],
  },
  coning: {
    covers: [
      'If you see a ridge down the middle of your tummy, come back to the easier one.',
      'watch for any doming and stop there',
      'Check your belly is not bulging.',
    ],
    misses: ['Hug your baby in.', 'Draw a dome with your arms.', 'Tummy long and soft.'],
  },
  overstretch: {
    covers: [
      "Stay well within your range, don't go looking for the end of it.",
      'your ligaments are softer now so about half of what you could do',
      "Please don't push to your limit in this one.",
    ],
    misses: ['Stretch long through the heel.', 'Hold the stretch for thirty seconds.', 'Feel that hamstring stretch.'],
  },
  'pelvic-girdle-pain': {
    covers: [
      'Any pain over the pubic bone, close the legs and leave it.',
      'if youve got pelvic girdle pain keep the knees together',
      'If your pelvis clicks, make it smaller.',
    ],
    misses: ['Tilt your pelvis under.', 'Feet wide, toes out.', 'Hips level, belly soft.'],
  },
  'pain-stop': {
    covers: [
      'A bit of an ache is fine, sharp pain means stop.',
      'if it hurts do less or leave it out',
      'Nothing above three out of ten for pain, in any of these.',
      'If the knee swells up tonight, do half next time.',
    ],
    misses: [
      'No pain, no gain, as my old coach said to nobody.',
      'Painting the ceiling with your toes.',
      'Push the knee down into the towel.',
    ],
  },
  'knee-tracking': {
    covers: [
      'Knee in line with your second toe.',
      'dont let that knee cave in as you step down',
      'Push your knees out over your toes.',
      "Watch the knee doesn't roll in.",
    ],
    misses: [
      'Knees under the bar, feet hip width.',
      'Knees bent, feet flat on the floor.',
      'Bring the knee up to hip height.',
    ],
  },
  'knee-torsion': {
    covers: [
      'If you feel it in your knee, come out and do figure four instead.',
      'the knee should never twist here its all hip',
      "Any pinching in the knee, that's your cue to ease out.",
    ],
    misses: ['Bring the knee forward behind the wrist.', 'Twist from the ribs.', 'Cushion under that hip.'],
  },
  'impact-landing': {
    covers: [
      'Land like a cat, knees soft.',
      'quiet landings please i dont want to hear your feet',
      'Bend your knees as you land.',
      "If your joints don't like jumping, step it out.",
    ],
    misses: ['Jump as high as you can.', 'Step it instead of hopping.', 'The plane landed at ten.'],
  },
  'surface-check': {
    covers: [
      'Check the ground in front of you for holes and wet leaves.',
      'have a look at the path first any roots or kerbs',
      "Find a flat, dry stretch of grass, it's slippery by the gate.",
    ],
    misses: ['Eyes on the horizon.', 'Push the ground away.', 'Feet under the hips.'],
  },
  'anchor-check': {
    covers: [
      'Give the straps a good tug before you lean back.',
      'make sure the door is shut and locked',
      'Check your anchor, every single time.',
      'Both buckles locked, rings at the same height, put your weight on them first.',
    ],
    misses: [
      'Hold the rings with the palms facing in.',
      'Straps long, rings at hip height.',
      'Pull the rings to your ribs.',
    ],
  },
  'band-recoil': {
    covers: [
      'Keep your face out of the way in case it snaps back.',
      'check the band for nicks before you stand on it',
      "Band right under the arch of your foot so it can't slip off the toes.",
      'If it pings off your foot it will come straight at your eyes.',
    ],
    misses: ['Stand on the band with both feet.', 'Pull the band to your forehead.', 'Wrap the band round your hands.'],
  },
  'clear-space': {
    covers: [
      'Make sure there is nobody in front of you.',
      'check behind you before you swing',
      'You need plenty of space for this one, move the coffee table.',
    ],
    misses: ['Make space between your shoulders and ears.', 'Swing from the hips.', 'Leave a space between the feet.'],
  },
  'overhead-shoulder': {
    covers: [
      'If that shoulder pinches, bring the arms forward.',
      'anyone with a dodgy shoulder press straight out in front instead',
      "Don't just dangle off the joints, pull the shoulders down.",
    ],
    misses: [
      'Shoulders down away from the ears.',
      'Press up until the arms are straight.',
      'Squeeze your shoulder blades.',
    ],
  },
  'spotter-or-safeties': {
    covers: [
      'Set the safeties just below your bottom position.',
      'no spotter no heavy sets',
      'If you get stuck, sit it down onto the pins.',
    ],
    misses: ['Set your feet just outside the hips.', 'Step back from the rack, two steps.', 'Spot on, lovely.'],
  },
  'safe-dismount': {
    covers: [
      "Don't just drop off, put your feet on the box first.",
      'lower yourself down with control and step off',
      'Feet find the floor before you let go.',
    ],
    misses: ['Drop the shoulders.', 'Lower with control, three seconds.', 'Hang with straight arms.'],
  },
  'overexertion-stop': {
    covers: [
      'If you feel dizzy or sick, stop and walk it off.',
      'if you cant get a word out ease right off',
      'Any chest pain at all, stop and tell me.',
    ],
    misses: [
      'Everything you have got, last ten seconds.',
      'You will be out of breath, that is the point.',
      "Don't stop now.",
    ],
  },
  'warm-first': {
    covers: [
      'Only do these if you are properly warmed up.',
      'never sprint on cold hamstrings',
      'Make sure you are warm before the fast ones.',
    ],
    misses: ['It is warm today, drink some water.', 'Eighty percent, nice and tall.', 'Run tall, quick feet.'],
  },
  'lumbar-extension': {
    covers: [
      'Keep your lower back pressed into the mat; if it lifts, bend your knees.',
      'if your low back pinches come down a bit',
      "Don't let your back arch as the legs lower.",
      'Ease off if you feel it in the small of your back.',
    ],
    misses: ['Lift your chest off the mat.', 'Lower the leg towards the floor.', 'Lie back down and rest.'],
  },
} as const satisfies Record<HazardSlug, Sayings>
