/** Short invented classes in the manners in which coaches speak, each with what a draft must find in it. */

export interface MiniClass {
  title: string
  /** Blocks as `[m:ss] text`. */
  transcript: string
  /** In order: the catalogue id (or null for a name nobody listed), and words of the dose that must be quoted (null = not looked at); missed = taught, but not found so far. */
  taught: readonly { id: string | null; name: RegExp; said: string | null; missed?: true }[]
  notTaught: readonly RegExp[]
}

export const MINI_CLASSES: readonly MiniClass[] = [
  {
    title: 'barbell strength, names as headings in the middle of sentences',
    transcript: `[0:00] Evening all. Tonight is squats and bench, with some rows and Romanian deadlifts after, and if there's time we'll finish on curls. I had a terrible night's sleep so be kind.
[0:20] Right, first lift is the back squat. Set the safety bars just below where you'll bottom out. Bar across the meat of your shoulders, feet a bit wider than your hips. Big breath into your belly, sit down between your heels and drive up.
[0:45] Don't let the knees cave. If your back rounds, rack it and take weight off. Five sets of five, two minutes rest between. Keep your chest proud.
[1:10] And rack it. Good. Okay, over to the bench. Bench press now. Lie back with your eyes under the bar, feet flat on the floor. Lower the bar to the bottom of your chest, then press it back over your shoulders. Three sets of eight.
[1:40] Have someone spot you, never lift alone with your thumbs off. Elbows at forty five degrees. To make it easier use dumbbells instead. Breathe out as you press.
[2:05] Nice work. Next up, Romanian deadlifts. Hold the bar at your hips, soft knees. Push your hips back and slide the bar down your thighs until you feel your hamstrings. Stand up tall. Ten reps, three sets. It's the same hinge you'll want in the barbell row.
[2:35] Don't round your back. And done. Let's move on to barbell rows. Hinge forward, bar hanging under your shoulders. Pull it to your belly button, lower with control. Four sets of six, a minute off.
[3:05] That's it, we ran out of time for the curls. See you Thursday.`,
    taught: [
      { id: 'back-squat', name: /back squat/i, said: 'Five sets of five' },
      { id: 'bench-press', name: /bench/i, said: 'Three sets of eight' },
      { id: 'romanian-deadlift', name: /romanian deadlift/i, said: 'Ten reps, three sets' },
      { id: 'barbell-row', name: /barbell row/i, said: 'Four sets of six' },
    ],
    notTaught: [/curl/i],
  },
  {
    title: 'bands, all lower case and without punctuation',
    transcript: `[0:00] hi everyone grab your long band and your little loop band today we're doing pull aparts some rows and then clams and side steps at the end it takes about fifteen minutes
[0:20] okay pull aparts stand tall with the band in both hands palms down arms out in front at shoulder height pull the band apart until it touches your chest then come back slowly don't shrug your shoulders
[0:45] we'll do twelve of those two sets breathe out as you pull if it's too hard hold the band wider lovely keep going
[1:10] right next is the seated row sit down with your legs long and loop the band round your feet check the band for nicks and keep your toes up so it can't slip off pull your elbows back past your ribs and squeeze your shoulder blades three sets of ten
[1:40] don't lean back as you pull and breathe out when you row good and rest
[2:00] now clams pop the loop just above your knees lie on your side with your knees bent and your heels together open the top knee like a book and close it slowly fifteen each side don't roll your hips back
[2:30] if your hip pinches take the band off and okay last one side steps loop round your ankles stand with soft knees and step out to the side keep the tension on the band ten steps each way
[3:00] keep your toes pointing forward don't let your knees fall in that's us done well done see you next week`,
    taught: [
      { id: 'band-pull-apart', name: /pull apart/i, said: 'twelve of those' },
      { id: 'seated-band-row', name: /row/i, said: 'three sets of ten' },
      { id: 'band-clam', name: /clam/i, said: 'fifteen each side' },
      { id: 'band-side-step', name: /side step/i, said: null },
    ],
    notTaught: [],
  },
  {
    title: 'knee rehabilitation, names after "this is called" and unlisted names',
    transcript: `[0:00] Hello, this is your knee session. If the pain goes above four out of ten during any of these, stop and tell your physio.
[0:15] The first exercise is called a quad set. Lie on your back with your sore leg out straight and a rolled towel under the knee. Press the back of the knee down into the towel and tighten your thigh. Hold it for five seconds, then let go. Ten times, three times a day.
[0:45] Don't hold your breath. If your kneecap hurts, use a thicker towel.
[1:00] Exercise two, heel slides. Same position. Slide your heel towards your bottom as far as is comfortable, then slide it away. Twelve of these. Stop if it's sharp.
[1:30] Next up is the patella wiggle. Sit with the leg straight and relaxed. Take hold of your kneecap with your thumb and finger. Move it gently side to side. Thirty seconds. It shouldn't hurt at all.
[2:00] You might have heard of the leg press, we'll leave that for month two. Then straight leg raises. Lie back, bend the good knee, keep the sore one straight. Lift it to the height of the other knee, lower it slowly. Two sets of eight. Keep your thigh tight the whole time.
[2:40] And finally, stand up, and we'll do mini squats. Hold on to the kitchen worktop. Bend both knees a little, then straighten. Ten of those. Keep your knees over your toes.`,
    taught: [
      { id: 'quad-set', name: /quad set/i, said: 'Hold it for five seconds' },
      { id: 'heel-slide', name: /heel slide/i, said: null },
      { id: null, name: /patella wiggle/i, said: 'Thirty seconds' },
      { id: 'straight-leg-raise', name: /straight leg raise/i, said: 'Two sets of eight' },
      { id: 'mini-squat', name: /mini squat/i, said: null },
    ],
    notTaught: [/leg press/i],
  },
  {
    title: 'running drills outdoors, with a return',
    transcript: `[0:00] Morning runners. Have a look round, watch for the kerb and the wet leaves. We'll do some A skips, carioca and strides today. Warm up first with an easy jog, five minutes, you should be able to chat.
[0:25] A skips. Stand tall, drive one knee up and skip off the other foot. Toes up, arms swing. Twenty metres, two lengths. Don't lean back. If your calf is tight just march it.
[0:55] And walk back. Carioca next. Turn sideways, step across in front, then behind. Let the hips turn, keep your shoulders facing forwards. Two lengths each way. Look where you're going.
[1:25] Walk back. Back to the A skips, one more length. Quicker feet this time. Land softly.
[1:45] Right, strides. Start easy and build to about eighty percent by the middle, then float. Four times sixty metres, walk back rest. Tall and relaxed. Don't sprint, we're saving sprints for next month.
[2:15] Good running. Have some water. Bye now.`,
    taught: [
      { id: 'a-skip', name: /a skip/i, said: null },
      { id: 'carioca', name: /carioca/i, said: null },
      { id: 'stride', name: /stride/i, said: null },
    ],
    notTaught: [/sprint/i],
  },
  {
    title: 'rings, set-up before the name',
    transcript: `[0:00] Before anything, hang off your straps and check the anchor holds. Rings at chest height.
[0:15] Take a ring in each hand and walk your feet forward until you're leaning back. Body straight like a plank. Pull your chest to the rings, elbows close, and lower all the way. That's your ring row. Three sets of eight. Step your feet back to make it easier.
[0:45] Don't let your hips sag. And stand up. Now lower the rings to hip height. Press up support. Hands on the rings, arms straight, turn the rings out. Hold for fifteen seconds, four rounds. If your shoulders hurt come down. Toes can stay on the floor.
[1:20] Rest. Okay, dead hangs. Jump up or use a box, both hands on the rings. Just hang, long arms, breathe. Twenty seconds. Step down, don't drop off.
[1:50] I used to be able to do a muscle up, years ago. Not any more. Well done everyone.`,
    taught: [
      { id: 'ring-row', name: /ring row/i, said: 'Three sets of eight' },
      { id: null, name: /press up support|support/i, said: 'Hold for fifteen seconds' },
      { id: 'dead-hang', name: /dead hang/i, said: 'Twenty seconds' },
    ],
    notTaught: [/muscle up/i, /^plank$/i],
  },
  {
    title: 'core on the mat, American wording, doses told in a programme',
    transcript: `[0:00] Hey team, core day. Here's the plan, dead bugs for ten each side, then forearm planks, three by thirty seconds, bicycles, twenty total, and we finish with bird dogs, eight each side.
[0:20] Let's start with dead bugs. Lie on your back, knees over your hips, arms to the ceiling. Lower your right arm and left leg toward the floor, then switch. Keep your low back pressed into the mat. Exhale as you reach.
[0:50] If your back arches, only tap your heel down. Awesome. Alright, forearm plank. Elbows under shoulders, legs long, squeeze your glutes. Don't let your hips drop. Drop to your knees if you need to. Breathe.
[1:20] And rest. Moving on to bicycles. Hands light behind your head, don't pull on your neck. Bring opposite elbow to knee, slow and controlled.
[1:50] Last but not least, bird dogs. Come to all fours, hands under shoulders. Reach your right arm and left leg long, then switch. Keep your hips level. Make it six each side actually, we're short on time.
[2:20] Great job, grab some water.`,
    taught: [
      { id: 'dead-bug', name: /dead bug/i, said: 'ten each side' },
      { id: 'plank', name: /plank/i, said: 'three by thirty seconds' },
      { id: 'bicycle-crunch', name: /bicycle/i, said: 'twenty total' },
      { id: 'bird-dog', name: /bird dog/i, said: null },
    ],
    notTaught: [],
  },
]
