/** Short invented classes full of names that no list has, brought in many ways: the weights of the finder are fitted on them. */
import type { MarkedClass } from './score-marked.ts'

export const MARKED_CLASSES_NAMED: readonly MarkedClass[] = [
  {
    title: 'names of a studio in the north',
    text: `[0:00] Hello gang. Busy in here tonight. Twelve moves, all mine, all with silly names because I can't remember the proper ones. Clear the floor of bags.
[0:12] <1>First of the silly names, the window cleaner. Stand with your feet wide, arms up in front. Sweep both hands to the right as you shift your weight, then back to the left. Soft knees. Long arms. We'll do twenty in all.</1>
[0:34] <2>Drunken sailor. Walk along the line, one foot crossing over the other, arms out wide. Eyes up, not on your toes. Ten steps there, ten steps home. Big breath.</2>
[0:54] <3>Now this is called the butter churn. Hands together at your belly, draw big circles, let the hips follow. Tall spine. Eight one way, eight the other.</3> My nan had a real one. Worth a fortune now, she binned it.
[1:14] <4>Then we have gate posts. Lean your back on the wall, heels a foot away, slide down a little, arms bent up like goal posts. Press the elbows back and hold. Thirty seconds. Flat back. Lovely work.</4>
[1:36] <5>Okay. Scissor sisters. Lie down on your back, legs up, and let them cross one over the other. Low back stays down. Twelve crosses, tiny ones. If your back lifts, legs higher.</5>
[1:56] <6>And the last one on the floor is my personal favourite, the hovering table. All fours, tuck your toes, float the knees up an inch. Hold for ten seconds, down, and again. Three of them.</6>
[2:18] <2>Up we get for the drunken sailor again. Cross and cross, ten steps and back.</2> And that's that. Next week there'll be a fire hose and you'll hate it.`,
    taught: [
      { name: /window cleaner/i, dose: { reps: 20 } },
      { name: /sailor/i, dose: { sets: 2, reps: 10, sides: true } },
      { name: /butter churn/i, dose: { reps: 8, sides: true } },
      { name: /gate post/i, dose: { hold: 30 } },
      { name: /scissor/i, dose: { reps: 12 } },
      { name: /table/i, dose: { sets: 3, hold: 10 } },
    ],
    notTaught: [/fire hose/i],
  },
  {
    title: 'barn boot camp',
    text: `[0:00] Alright y'all, welcome to the barn. Gloves if you got 'em. We got five things to do and we're doing each one for a minute, half a minute to catch your breath, two times through.
[0:16] <1>First thing's hay bales. Grab that sandbag, hug it to your belly, stand up, turn and set it on the box. Then bring it back. Bend at the knees, don't you dare round that back.</1>
[0:34] <2>Second thing is fence hops. Hands on the bench, hop your feet from one side to the other. Land quiet. Step over it if hopping ain't your thing.</2>
[0:52] <3>Third, the water haul. A jug in each hand, walk to the barn door and back. Shoulders down, tall like a flagpole. Don't let 'em bang your knees.</3>
[1:08] <4>Fourth thing, tire taps. Run on the spot and tap the tire with your toes, quick feet. Stay light.</4> <5>And fifth, y'all remember the chain pull? Sit on your butt, feet against the post and pull that chain in, hand over hand. Chest up.</5>
[1:30] Any questions? No? Find a spot. Three, two, one, work. <1>Hay bales, hug it tight. Use your legs.</1> <2>Fence hops, quick and quiet.</2> <3>Water haul, walk tall.</3> <4>Tire taps, keep 'em light.</4> <5>Chain pull, lean back into it.</5>
[2:10] Lord, it's warm. My uncle ran this place for forty years and never broke a sweat. Good job. Go home.`,
    taught: [
      { name: /hay bale/i, dose: { sets: 2, work: 60, rest: 30 }, scheme: 'circuit' },
      { name: /fence hop/i, dose: { sets: 2, work: 60, rest: 30 }, scheme: 'circuit' },
      { name: /water haul/i, dose: { sets: 2, work: 60, rest: 30 }, scheme: 'circuit' },
      { name: /tire tap/i, dose: { sets: 2, work: 60, rest: 30 }, scheme: 'circuit' },
      { name: /chain pull/i, dose: { sets: 2, work: 60, rest: 30 }, scheme: 'circuit' },
    ],
    notTaught: [],
  },
  {
    title: 'slow movement, images for names',
    text: `[0:00] Good evening. Let's take a moment. Shoes off, phones off. If anything pinches, make it smaller, and smaller again if you have to.
[0:14] We begin standing. <1>Let the arms rise as you breathe in, like steam from a bowl, and sink as you breathe out. This is rising steam. Knees unlocked. Six breaths.</1>
[0:34] <2>Next comes the willow. Feet together, one arm overhead, and lean away from it. Just a little, then come back to the middle and lean the other way. Both feet heavy. Four on each side.</2> Beautiful.
[0:54] <3>From the willow we go into pouring water. Step one foot back, turn the chest towards the front leg, and tip the top hand as if you were pouring. Slowly. Five each side.</3>
[1:12] <4>Come down to the floor. The sleeping cat. Kneel, fold forwards, and let your forehead rest on your hands. If your head doesn't like being down, stack two fists. Stay for eight breaths.</4> It's my favourite, you can probably tell.
[1:34] <5>Rolling over on to your back. What follows is known as the rocking boat. Hug both knees and rock side to side, small. Let your back be massaged. One minute.</5>
[1:52] <1>We'll close as we opened, standing, with the rising steam. Arms up, arms down. Three breaths this time.</1> Thank you. The long lotus is for another evening.`,
    taught: [
      { name: /steam/i, dose: { reps: 6, unit: 'breath' } },
      { name: /willow/i, dose: { reps: 4, sides: true } },
      { name: /pouring/i, dose: { reps: 5, sides: true } },
      { name: /cat/i, dose: { reps: 8, unit: 'breath' } },
      { name: /boat/i, dose: { work: 60 } },
    ],
    notTaught: [/lotus/i],
  },
  {
    title: 'physio voice, plain words',
    text: `[0:00] Thanks for making it. These are for the low back. I'll go through each, you'll do them with me, and there's a sheet to take home.
[0:14] <1>Number one is a pelvic rock. On your back, knees bent. Gently flatten your back into the bed, and then let it arch. Comfortable range only. Ten of those.</1>
[0:32] <2>Number two's knee rolls. Keep both knees together and let them drop to one side, then the other side. Shoulders stay flat. Ten each way. It shouldn't hurt, it should feel like a stretch.</2>
[0:52] <3>Third one, single knee hugs. Bring one knee to your chest and hold behind the thigh. Twenty seconds, and change. Twice on each leg.</3> Do you all sleep alright? I had a chap in here who slept in a bath.
[1:12] <4>Fourth, and you'll need to turn over for this, prone press backs. Lie on your front, hands by your shoulders, and push your chest up. Let the back go soft. If it runs down your leg, stop. Eight repetitions.</4>
[1:34] <5>The next exercise we use a lot is the wall tuck. Back against the wall, feet forward, and tuck your tail so your back goes flat. Hold for five seconds. Do it ten times.</5>
[1:54] <6>Finally a doorway lean. Forearms on the frame, step through until your chest opens. Keep your chin in. Hold for thirty seconds, three times.</6> The ball work and the bridging will come later. Twice a day please.`,
    taught: [
      { name: /pelvic rock/i, dose: { reps: 10 } },
      { name: /knee roll/i, dose: { reps: 10, sides: true } },
      { name: /knee hug/i, dose: { sets: 2, hold: 20, sides: true } },
      { name: /press back/i, dose: { reps: 8 } },
      { name: /wall tuck/i, dose: { reps: 10, hold: 5 } },
      { name: /doorway lean/i, dose: { sets: 3, hold: 30 } },
    ],
    notTaught: [/bridg/i],
  },
  {
    title: 'stretch by muscle',
    text: `[0:00] Right then, everything's tight, I know, that's why we're here. I'll say the muscle, you get into it. Every stretch is thirty seconds unless I say otherwise, and no bouncing.
[0:14] <1>Calves first. Hands on the wall, one leg back, heel down. Back knee straight. You'll feel it below the knee. Swap legs.</1>
[0:32] <2>Now quads. Stand on one leg, hold the wall, heel to your bum. Knees together. Don't arch. Other leg.</2>
[0:48] <3>Hip flexors next. Half kneeling, tuck your tail, shift forward. Something under the knee if it's bony. Make this one forty-five seconds each.</3> I was a hurdler once. You'd not think so now.
[1:08] <4>Hamstrings. Sit down, one leg out, other one tucked in. Chest to the thigh, back long. Swap over.</4> <5>Inner thighs. Soles together, let the knees fall. Elbows can help, gently.</5>
[1:30] <6>The back of the shoulder now. Arm across, pull it in with the other one. Keep the shoulder down. And the other arm.</6> <7>And we'll finish on the chest. Hands clasped behind you, lift a bit. Open up. Breathe.</7>
[1:52] <4>Hamstrings again, because they're always the worst. Leg out, chest forward.</4> Forearms we'll skip, there's climbers in next.`,
    taught: [
      { name: /calves|calf/i, dose: { hold: 30, sides: true } },
      { name: /quad/i, dose: { hold: 30, sides: true } },
      { name: /hip flexor/i, dose: { hold: 45, sides: true } },
      { name: /hamstring/i, dose: { sets: 2, hold: 30, sides: true } },
      { name: /thigh/i, dose: { hold: 30 } },
      { name: /shoulder/i, dose: { hold: 30, sides: true } },
      { name: /chest/i, dose: { hold: 30 } },
    ],
    notTaught: [/forearm/i],
  },
  {
    title: 'dance conditioning',
    text: `[0:00] Hi loves, parallel feet, find your space. Tonight we've swings, drops, a travelling bit, and floor at the end. Swings are eights, drops are fours.
[0:14] <1>So, swings. Let the arm be heavy, swing it forward, swing it back, the knees bend as it passes. Neck is free. Eight on the right and eight on the left.</1>
[0:34] <2>Good, shake that off. Drops. Reach up, up, up, and let it all go, fold over, hang. Roll up through the spine, head last. If you get light-headed, come up slower. Four of those.</2>
[0:54] <3>Here's the travelling bit, triplets. Down, up, up. Down, up, up. Across the room and back again. Long steps, soft landing. Twice.</3> No bumping into Marcus. He's had surgery.
[1:14] <4>On the floor, please, for x rolls. Lie in a big star, pull the elbow and knee together, and roll over like you're wringing a towel. Slow it down. Six altogether.</4>
[1:34] <5>And the last thing we do is the C curve. Sit, hands behind knees, round back and scoop, hold for a count of four, and grow tall. Five times.</5> The leap stays on my list. See you Tuesday.`,
    taught: [
      { name: /swing/i, dose: { reps: 8, sides: true } },
      { name: /drop/i, dose: { reps: 4 } },
      { name: /triplet/i, dose: { sets: 2 } },
      { name: /x roll/i, dose: { reps: 6 } },
      { name: /c curve/i, dose: { reps: 5, hold: 4 } },
    ],
    notTaught: [/leap/i],
  },
  {
    title: 'kettlebell complex, short words',
    text: `[0:00] Evening. One bell. Put it down for now. We'll build the flow piece by piece, then join it up. Check there's nobody behind you, and nothing you love.
[0:14] <1>Piece one, the hike pass. Bell a foot in front, hike it back between your legs and let it land again. That's all. Flat back, long arms. Eight of those.</1>
[0:32] <2>Piece two, dead cleans. Bell between your feet, zip it up your jacket into the rack. It shouldn't bang your wrist. Five on each arm.</2> That's better. Don't grip so hard.
[0:52] <3>Piece three is the push press. From the rack, dip, drive, and catch it overhead. Ribs down. If the shoulder's unhappy, keep to the clean. Five each arm.</3>
[1:10] <4>And piece four, you're carrying it. Rack walk. Twenty metres, elbow in, walk slow, then change hands.</4> Okay, rest. A minute.
[1:28] <5>Now put it all together, that's our flow. One hike, one clean, one press, and walk. Three rounds on each arm and ninety seconds off between rounds.</5>
[1:48] <2>Before you pack up, five more cleans each arm. Zip it. Soft hands.</2> Snatches are for when I trust you.`,
    taught: [
      { name: /hike/i, dose: { reps: 8 } },
      { name: /clean/i, dose: { sets: 2, reps: 5, sides: true } },
      { name: /push press/i, dose: { reps: 5, sides: true } },
      { name: /rack walk/i, dose: { metres: 20, sides: true } },
      { name: /flow/i, dose: { sets: 3, rest: 90, sides: true } },
    ],
    notTaught: [/snatch/i],
  },
  {
    title: 'senior dance in chairs, no list anywhere',
    text: `[0:00] Hello everybody, hello Joan. Sit well back to start. If your doctor's told you not to do something, then don't, whatever I say.
[0:12] <1>We'll wake up the feet. It's the piano. Toes down one after another like you're playing scales, then lift them all. Heels stay on the floor. Go on for half a minute.</1>
[0:32] <2>And the washing line. Reach up with one arm and peg it, reach with the other and peg it. Look up at your hand if your neck lets you. Ten pegs.</2> I used to hate Mondays for that.
[0:52] <3>Now hands on your shoulders for the chicken. Elbows round and round. Big as you can. Five forwards and five back.</3> <4>Right, who wants a march? We all want a march. Knees up, swing the arms, sit tall. A whole minute. Slow down if you're puffed.</4>
[1:20] <5>Hold on to the seat with both hands. Cancan kicks. Straighten one leg out, then the other. Don't slide forward. Eight each leg.</5> Oh that's lovely.
[1:40] <6>To finish off, the royal wave. Elbow by your side, turn the hand one way and the other. It's for the wrist. Ten each hand.</6> No jive today, I'm afraid, we've run out of puff.`,
    taught: [
      { name: /piano/i, dose: { work: 30 } },
      { name: /washing line/i, dose: { reps: 10 } },
      { name: /chicken/i, dose: { reps: 5, sides: true } },
      { name: /march/i, dose: { work: 60 } },
      { name: /cancan/i, dose: { reps: 8, sides: true } },
      { name: /wave/i, dose: { reps: 10, sides: true } },
    ],
    notTaught: [/jive/i],
  },
  {
    title: 'functional class, names at the end',
    text: `[0:00] Evening team. Bit of a squeeze, find a mat each. Nothing heavy tonight, just you.
[0:10] <1>Stand tall. Step one foot behind and across, bend both knees, like you're greeting the queen, and come back up. That'd be a curtsy dip. Front knee over the foot. Ten on each leg.</1>
[0:32] <2>Get yourself down. On your side, propped up, top foot in front, and lift the bottom leg. Inner thigh raise is what they call that one. Small and neat. Fifteen, then roll over.</2>
[0:52] <3>On your front. Arms out like wings, squeeze the shoulder blades and lift the chest. Look at the mat. What you've got there is a swan lift. Ten, and hold the last for five. If your low back nips, stay lower.</3>
[1:14] Water. Is that fan on? <4>Back onto your hands and knees, lift one knee out to the side, like a dog at a lamp post. I don't need to tell you what that's called. Lamp post lifts. Twelve each leg, hips level.</4>
[1:38] <5>Sit up. Hands by your hips, lift your bum, walk forward four, walk back four. There's your crab shuffle. Thirty seconds, rest for fifteen, thirty more.</5>
[1:58] <6>And up to standing. Arms wide, and wring them out, one palm up, one palm down. Twisted wings. Do ten.</6> The burpees get a week off.`,
    taught: [
      { name: /curtsy/i, dose: { reps: 10, sides: true } },
      { name: /thigh raise/i, dose: { reps: 15, sides: true } },
      { name: /swan/i, dose: { reps: 10 } },
      { name: /lamp post/i, dose: { reps: 12, sides: true } },
      { name: /crab/i, dose: { sets: 2, work: 30, rest: 15 } },
      { name: /wings/i, dose: { reps: 10 } },
    ],
    notTaught: [/burpee/i],
  },
  {
    title: 'park circuit without punctuation, own names',
    text: `[0:00] morning all lovely frost on the grass so watch your feet five stations by the trees thirty seconds on and fifteen to walk to the next one and we do the lot three times
[0:14] <1>first station is the bench burner hands on the bench feet back run your knees in as quick as you like keep your bum down</1>
[0:30] <2>second station tree huggers back to the tree slide down till you're sitting and wrap your arms behind it hold it there heels under your knees</2>
[0:46] <3>third one the puddle jump two feet over the rope and back again land soft if your knees don't like it step it</3> I fell in one last week true story
[1:02] <4>fourth station is log rolls well not a real log it's the big bag roll it with both hands to the cone and back stay low flat back</4>
[1:18] <5>and the fifth one's the branch pull reach up hold the branch and pull your chest to it toes on the ground to help</5>
[1:32] off we go then <1>bench burners quick knees</1> <2>tree huggers sink a bit lower</2> <3>puddle jumps quiet feet</3> <4>log rolls push from the legs</4> <5>branch pulls elbows down</5> and that's round one have a drink`,
    taught: [
      { name: /bench burner/i, dose: { sets: 3, work: 30, rest: 15 }, scheme: 'circuit' },
      { name: /tree hugger/i, dose: { sets: 3, work: 30, rest: 15 }, scheme: 'circuit' },
      { name: /puddle/i, dose: { sets: 3, work: 30, rest: 15 }, scheme: 'circuit' },
      { name: /log roll/i, dose: { sets: 3, work: 30, rest: 15 }, scheme: 'circuit' },
      { name: /branch pull/i, dose: { sets: 3, work: 30, rest: 15 }, scheme: 'circuit' },
    ],
    notTaught: [],
  },
  {
    title: 'young mothers on the mat',
    text: `[0:00] Hi mums, babies down on the blanket where you can see them. If you're less than six weeks, just watch and breathe, and check with your midwife before you join in.
[0:14] <1>Let's ease in with some belly hugs. Sit tall, breathe in wide, and as you breathe out hug the belly towards the spine. Nothing forced. Ten breaths.</1>
[0:34] <2>The lift comes next. Picture a lift in a building, and draw the pelvic floor up, first floor, second floor, and let it all the way back down. Don't clench your bum. Five times, and hold the top for three seconds.</2>
[0:58] <3>Lie down for some heel taps. Legs in tabletop, tap one heel down, then the other. If your tummy domes, put the feet down. Eight each side.</3> Is he alright? He's fine.
[1:18] <4>Roll on your side, we're going to do the clam. Heels stay together and the knee lifts. Twelve on this side, twelve on the next.</4> <5>Last but not least, baby presses! Baby on your chest, arms strong, and push them up to the ceiling. Only if their head is steady. Eight kisses.</5>
[1:44] <1>Finish back where we were, sitting, with those belly hugs. Wide breath in, hug on the way out. Five of them.</1> No planks till I've checked you.`,
    taught: [
      { name: /belly hug/i, dose: { reps: 10, unit: 'breath' } },
      { name: /lift/i, dose: { reps: 5, hold: 3 } },
      { name: /heel tap/i, dose: { reps: 8, sides: true } },
      { name: /clam/i, dose: { reps: 12, sides: true } },
      { name: /baby press/i, dose: { reps: 8 } },
    ],
    notTaught: [/plank/i],
  },
]
