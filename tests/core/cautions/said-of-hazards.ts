/**
 * What instructors say that covers a hazard, and near misses that do not.
 * Our own sentences, written before the word lists were tried on them; the trade's everyday English, common practice, no source.
 * First run: 83 of 88 covered and 2 of 75 false; in freer words 35 of 50 and 1 of 37, then 27 of 41 and 4 of 27.
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
      'Rows and squats back to back, three rounds.',
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
      'If you have chest pain, stop and tell me.',
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

/** Two further rounds in freer words, likewise written before they were tried. */
export const SAID_FREELY: Partial<Record<HazardSlug, Sayings>> = {
  'breath-hold': {
    covers: [
      "Nose over toes, breathe out as you stand, nobody's holding their breath please",
      "Squeeze the cushion, and keep chatting while you do it so I know you're breathing",
      "Now if you've got blood pressure, don't hold it, hiss it out instead",
      "Puff out as you come up, don't hold it in",
      "if your cheeks are full of air you're holding your breath",
    ],
    misses: [
      'Hold the weight close',
      "Big breath in, brace like someone's going to poke you",
      'Hold here, two more',
      'Hold it, hold it, and down',
    ],
  },
  'dizziness-rise': {
    covers: [
      "Once you're up, count to three before you do anything clever, and if you come over swimmy, sit",
      "Come up with your head last and wait till the room's stopped",
      'take your time getting up and if your head swims sit back down',
      'No leaping up, blood pressure takes a second to catch up when you stand',
    ],
    misses: [
      'Stand up, squeeze, sit down slow',
      'Wait for the beat before you go',
      'Rest for a minute before the next set',
      'Stand up in two, sit down in four',
    ],
  },
  'fall-risk': {
    covers: [
      "Keep a hand on the back of that chair, it's your mate",
      'Fingers on the worktop, no heroes',
      'Have the kitchen counter in front of you, two fingers',
      "hold the back of the chair lightly like it's a cup of tea",
      'Stay close to the wall for this, and if you tip, just tap it',
      "I want everyone touching something that doesn't move",
    ],
    misses: [
      'Sit tall, hands on your thighs',
      'Hold the bar a bit wider than your shoulders',
      'Hold that for five',
      'Feet flat, hands in your lap',
      'Put your chair to one side for now',
    ],
  },
  'bone-health': {
    covers: [
      "Anybody been told they've got thin bones, or osteoporosis, keep the turn small and don't yank it",
      "Now if your bones are a bit thin or you've had a crush fracture, just a small turn",
    ],
    misses: ['One bone at a time up the spine', 'Squeeze your shoulder blades, feel the bones move'],
  },
  'inverted-head-down': {
    covers: [
      "If you've got glaucoma or blood pressure that misbehaves, stay up, hands on knees",
      'If your head fills up or you go dizzy upside down, come back the way you came',
      "keep your chest up if you've got high blood pressure or eye problems, don't drop the head",
    ],
    misses: ['Head heavy, let it go', 'Keep your eyes on your toes'],
  },
  'overhead-shoulder': {
    covers: [
      'If your shoulder grumbles, just go to the forehead',
      'Any nip in the front of the shoulder, stop lower, or press from a high incline',
      'Shoulders switched on, no hanging off your ligaments',
      "if overhead's not nice for your shoulder, press out in front",
      "sharp in the shoulder, don't go that high",
    ],
    misses: ['Keep your shoulders out of your ears', 'Press it up, biceps by the ear', 'Arms by your ears, long spine'],
  },
  'spotter-or-safeties': {
    covers: [
      'Safety arms one notch below where your bar gets to, every time',
      'Nobody squats in here without the pins in',
      "pins at the right height, please, before there's any weight on it",
      "if you're going to fail, fail into the safeties",
    ],
    misses: ['Pin your elbows to your sides', 'Safety first, as they say'],
  },
  'loaded-spinal-flexion': {
    covers: [
      'If that lower back tucks under or rounds, rack it',
      'Your back stays like a plank; if it goes, the bar goes down',
      "if I see a banana back I'm taking a plate off",
      "Don't let it round, if it rounds, the weight's too heavy",
      'keep the spine long, no tucking under',
    ],
    misses: [
      'Lie on your back, knees bent',
      'Chest up, bar close to the shins',
      'Back foot stays flat',
      'Three rounds, back to the start',
    ],
  },
  'knee-tracking': {
    covers: [
      "Knees follow the toes, don't let them collapse in like a deckchair",
      'Kneecap over your second toe',
      "knee stays in line with the middle of your foot don't let it wander in",
      "don't let your knees kiss",
      "Check that kneecap's pointing the same way as your toes",
    ],
    misses: [
      'Bend your knees and sit back',
      'Drive through your toes, knee up to hip height',
      'Knees in towards your chest',
      'Slide the heel in, knee up',
    ],
  },
  'band-recoil': {
    covers: [
      'before you start have a look along your band for little nicks or tears because if it goes it goes in your face',
      "make sure its right under the middle of your foot not the toes or it'll ping up",
      'turn your face away a bit in case the band goes',
      'step right onto the middle of it so it cant fly out from under you',
      'mind your eyes, if this slips it comes straight up',
      'look it over for cracks before you stretch it',
    ],
    misses: ['Loop the band round both feet', 'Control it on the way back', 'Hold the band at the handles'],
  },
  'anchor-check': {
    covers: [
      'shut the door properly and give it a good tug',
      'Check both straps are done up and pull on them like you mean it',
      'Before you hang off anything, load it, lean, bounce, then trust it',
      'give your anchor a proper pull first, every time',
      'is the door locked, is anybody coming through it',
      'Carabiners shut, straps untwisted, give them your weight slowly',
    ],
    misses: [
      'Hold the rings by your ribs, elbows in',
      "Check your phone's on silent",
      'Face the door, arms straight',
      'Weight in your heels, lean back',
    ],
  },
  'pain-stop': {
    covers: [
      'Sore up to three out of ten is okay, four or five you back off',
      "If it's sharp or it swells up tonight, that was too much",
      'If the knee gives way, stop and ring us',
      "a stretch is fine, a stab isn't, a stab means stop",
      "if it's more than a four out of ten, you ease off",
      "you're allowed to feel it, you're not allowed to wince",
      'stop if it gets painful or the knee puffs up',
    ],
    misses: [
      "You'll feel the burn here",
      'Ten out of ten for effort',
      'Sharp turn at the cone',
      'three out of ten people get this wrong',
    ],
  },
  'safe-dismount': {
    covers: [
      "Don't let go and drop, toes down first",
      'Have a box under your feet so you can step off',
      "when you're done step down, don't jump down",
      'get a foot on the box before your grip goes',
    ],
    misses: ['Step up, step down, change legs', 'Drop into the squat', 'Let go of the tension in your jaw'],
  },
  'surface-check': {
    covers: [
      "Scan the grass, there's a rabbit hole by the third cone",
      'Watch the kerb at the far end',
      "have a look where you're putting your feet, it's uneven up by the trees",
    ],
    misses: ['Look at the floor a metre in front', 'Look up, not at the ground'],
  },
  'warm-first': {
    covers: [
      "If your calves are cold, don't do these, go and jog another lap",
      "These aren't for cold legs",
      "you've done your ten minutes easy haven't you, nobody strides out cold",
      "only if you're warm, if you're not, jog another one",
    ],
    misses: ["Warm up's done, well done", "That's you nice and warm"],
  },
  'impact-landing': {
    covers: ['Soft feet, land under you, quiet as mice', 'Quiet feet, absorb it through the knees'],
    misses: ['Light on the ball of your foot', 'Jump, jump, jump', 'Light feet, quick feet'],
  },
  'overexertion-stop': {
    covers: [
      'If you feel sick or see stars, walk, hands on head',
      "feeling sick or dizzy isn't a badge, stop and walk",
    ],
    misses: ["Don't you dare stop", 'This is the hard bit, dig in', 'Stop, rest, two minutes'],
  },
  'neck-pull': {
    covers: [
      "The hands just cup your head, don't wrench it",
      'If you feel it in your neck, head down',
      "your hands are a pillow, they don't do any lifting",
      "don't tug on the back of your head",
    ],
    misses: ['Hands by your ears, elbows out', 'Chin tucked, look at your knees', 'Nod the chin, lift the head'],
  },
  'lumbar-extension': {
    covers: [
      'If your lower back pops off the mat, legs higher',
      'Stop when the back starts to arch',
      'Low back glued to the mat',
      'Pinching in the back, lift less',
      "if you can slide a hand under your back you've gone too low",
      'any nipping in the low back and you make it smaller',
      "Keep that back flat on the floor, the second it lifts you've gone too far",
    ],
    misses: [
      'Lift the chest, squeeze your bum',
      'Back down with control',
      'Arch up, chest off the floor',
      'Lie with your back flat on the floor, arms by your sides',
    ],
  },
  'clear-space': {
    covers: ['Two metres all round you, and nobody walks through', "make sure there's nothing and no one behind you"],
    misses: ['Feet a bit wider than your hips', 'Look straight ahead', "Nobody's looking, have a go"],
  },
  'supine-pregnancy': { covers: ['If you go queasy or hot lying down, roll over to your left'], misses: [] },
  coning: { covers: ["If your tummy peaks like a tent, that's your sign to stop"], misses: [] },
  overstretch: { covers: ["Everything's a bit looser in there just now, so stop well short of your end"], misses: [] },
  'pelvic-girdle-pain': { covers: ["If your pubic bone's grumbling, keep your knees together"], misses: [] },
  'knee-torsion': { covers: ["Your knee shouldn't feel a thing, and if it does, slide the foot in"], misses: [] },
}
