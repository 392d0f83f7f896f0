/** Ten short invented classes that the rules for unpunctuated speech and short doses were tuned on: no measure of new ones. */
import type { SpokenClass } from './spoken-class.ts'

export const SPOKEN_CLASSES: readonly SpokenClass[] = [
  {
    title: 'floor work for the middle',
    transcript: `[0:00] Morning all. Mats out, shoes off. It's twelve minutes of floor work, then you're free. Don't worry, no crunches, I promised.
[0:15] Start on your back for dead bugs. Arms up to the ceiling, knees over hips. Reach one arm and the opposite leg away, come back to the middle. Keep your ribs down. Eight a side. Breathe out as you reach.
[0:45] If your back lifts off the floor, shorten the reach. Good. Turn over. Front plank, forearms down, toes tucked. Squeeze your bottom, look at your hands. Twenty seconds, three times, ten seconds off.
[1:15] Lovely. From here onto your side, side plank. Elbow under shoulder, hips up. Fifteen seconds each side. Knees down if the shoulder moans.
[1:40] Have a wiggle. My dog does this with me, he's hopeless. Next, bird dogs. All fours, reach one leg back and the other arm forward, pause for two. Six on each side, slow. Don't let the hips tip.
[2:10] Now bridges. Feet flat, hip width. Push through your heels and lift. Twelve. And again, twelve. Last one's a goodie, hollow hold. Low back pressed down, shoulders up, legs away. Fifteen seconds. Rest fifteen. Four rounds of that. Tuck the knees if your back comes up.`,
    taught: [
      { name: /dead bug/i, dose: { reps: 8, sides: true } },
      { name: /front plank/i, dose: { sets: 3, hold: 20, rest: 10 } },
      { name: /side plank/i, dose: { hold: 15, sides: true } },
      { name: /bird dog/i, dose: { reps: 6, sides: true, hold: 2 } },
      { name: /bridge/i, dose: { sets: 2, reps: 12 } },
      { name: /hollow/i, dose: { sets: 4, hold: 15, rest: 15 } },
    ],
    notTaught: [/crunch/i],
  },
  {
    title: 'kettlebells, without punctuation',
    transcript: `[0:00] evening everyone one bell each today pick something you could press five times we've got half an hour and I want you sweating
[0:14] first exercise is the kettlebell deadlift bell between your feet push your hips back flat back grab the handle and stand up tall three sets of ten keep the bell close to you
[0:40] don't squat it hinge it okay second one two handed swings hike the bell back between your legs snap your hips and let it float to chest height fifteen swings then thirty seconds rest four rounds
[1:08] your arms are just ropes let the hips do it nice third exercise goblet squat hold the bell by the horns at your chest elbows in sit down between your knees eight to ten reps three sets
[1:40] if your heels lift put a plate under them moving on single arm row one hand on the bench pull the bell to your hip and lower it slow ten each arm
[2:05] no twisting then we've got the suitcase carry bell in one hand stand tall and walk to the wall and back forty metres each side don't lean
[2:30] my neighbour carries his shopping like that anyway to finish halo bell upside down in front of your face circle it round your head keep your ribs down five each way and done`,
    taught: [
      { name: /deadlift/i, dose: { sets: 3, reps: 10 } },
      { name: /swing/i, dose: { sets: 4, reps: 15, rest: 30 } },
      { name: /goblet squat/i, dose: { sets: 3, reps: [8, 10] } },
      { name: /row/i, dose: { reps: 10, sides: true } },
      { name: /suitcase/i, dose: { metres: 40, sides: true } },
      { name: /halo/i, dose: { reps: 5, sides: true } },
    ],
    notTaught: [],
  },
  {
    title: 'shoulder clinic',
    transcript: `[0:00] Hello, this is for the ones sent by the clinic with a stiff shoulder. Pain up to four out of ten is fine, if it lingers till tomorrow do less.
[0:18] We begin with pendulums. Lean on the table with your good arm, let the other hang. Draw small circles with it, from the body, not the arm. A minute each direction. Let it be heavy.
[0:45] Table slides now. Sit, hands on a towel. Slide forward until you feel a stretch, breathe, slide back. Fifteen times, and twice a day.
[1:10] And on to wall crawls. Stand facing the wall, walk your fingers up as far as is comfy. Five, and hold the last one for ten seconds.
[1:35] It took my uncle two years, don't rush it. Isometric external rotation comes next. Elbow by your side, back of the hand against the door frame. Push, but nothing moves. Five seconds on, five off, ten times. Only half your strength.
[2:05] And then scapular squeezes. Pinch your shoulder blades back and down. Hold three seconds. Two sets of ten. Don't shrug. We'd normally do press-ups here, not this month.`,
    taught: [
      { name: /pendulum/i, dose: { work: 60, sides: true } },
      { name: /table slide/i, dose: { reps: 15 } },
      { name: /wall crawl/i, dose: { reps: 5, hold: 10 } },
      { name: /external rotation/i, dose: { reps: 10, hold: 5, rest: 5 } },
      { name: /scapular|squeeze/i, dose: { sets: 2, reps: 10, hold: 3 } },
    ],
    notTaught: [/press[- ]?up/i],
  },
  {
    title: 'bootcamp, without punctuation',
    transcript: `[0:00] what's going on team welcome to bootcamp it's early it's cold let's get moving I'm your coach for the next thirty minutes
[0:12] we're gonna start with jumping jacks feet together hands by your sides jump out and reach up stay light on your toes forty five seconds go go go
[0:36] and rest next exercise push ups hands under your shoulders lower your chest and push the ground away ten reps drop to your knees if you have to
[1:00] good job number three is walking lunges take a big step drop the back knee and step through ten steps each leg don't let that front knee cave in
[1:28] okay on to mountain climbers high plank drive your knees in one at a time keep your butt down thirty seconds on fifteen off two rounds
[1:55] catch your breath alright flutter kicks lie on your back hands under your hips lift your heels and kick small and fast low back stays on the ground for twenty seconds
[2:22] and the last one of the day bear crawl hands and feet knees an inch off the ground crawl to the cone and back twice that's all I've got for you tomorrow is burpees`,
    taught: [
      { name: /jumping jack/i, dose: { work: 45 } },
      { name: /push[- ]?up/i, dose: { reps: 10 } },
      { name: /walking lunge/i, dose: { reps: 10, sides: true } },
      { name: /mountain climber/i, dose: { sets: 2, work: 30, rest: 15 } },
      { name: /flutter kick/i, dose: { work: 20 } },
      { name: /bear crawl/i, dose: { reps: 2 } },
    ],
    notTaught: [/burpee/i],
  },
  {
    title: 'stretching in breaths',
    transcript: `[0:00] Welcome, settle in. No rush today, phones away. Every stretch should feel like a six out of ten, no more.
[0:16] Seated forward fold. Legs long, sit on a block if your hips are tight. Hinge forward from the hips, let the head hang. Stay five breaths.
[0:42] Come up slowly. The pigeon. From all fours slide your right knee forward, shin across the mat, back leg long. Fold if you like. Eight breaths, then swap.
[1:10] If the knee talks, come onto your back for figure four instead. Now thread the needle, on all fours, slide one arm under, shoulder down. Five breaths per side.
[1:38] I cried the first time I did that one. Lizard. Step one foot outside your hand, hips heavy. Half a minute each side will do. Don't force it.
[2:05] And finally legs up the wall. Scoot your bottom close, legs up, arms wide. Three minutes, or as long as you like. We'll save the camel for another evening.`,
    taught: [
      { name: /forward fold/i, dose: { reps: 5, unit: 'breath' } },
      { name: /pigeon/i, dose: { reps: 8, unit: 'breath', sides: true } },
      { name: /thread the needle/i, dose: { reps: 5, unit: 'breath', sides: true } },
      { name: /lizard/i, dose: { hold: 30, sides: true } },
      { name: /legs up the wall/i, dose: { hold: 180 } },
    ],
    notTaught: [/camel/i],
  },
  {
    title: 'calisthenics on rings, without punctuation',
    transcript: `[0:00] right lads rings today check the buckles check the beam then check them again I've seen one go and it's not pretty
[0:14] warm up with scap pulls hang from the rings arms straight pull your shoulder blades down and let them up slow two sets of eight
[0:36] then it's ring rows lean back heels dug in pull the rings to your ribs elbows close pause at the top for one three sets of ten ninety seconds rest
[1:05] step closer if it's too hard next up the support hold jump up lock your arms out turn the rings away from you don't shrug twenty seconds three goes
[1:32] my wrists hate that one now dips same position lower till your shoulders are level with your elbows press back up four sets of five if your shoulders pinch stop and go back to the support
[2:02] last one today knee raises dead hang bring your knees up to your chest no swinging lower under control eight to twelve reps two sets
[2:28] and don't jump off the rings step down skin the cat is for next month`,
    taught: [
      { name: /scap/i, dose: { sets: 2, reps: 8 } },
      { name: /row/i, dose: { sets: 3, reps: 10, hold: 1, rest: 90 } },
      { name: /support hold/i, dose: { sets: 3, hold: 20 } },
      { name: /dip/i, dose: { sets: 4, reps: 5 } },
      { name: /knee raise/i, dose: { sets: 2, reps: [8, 12] } },
    ],
    notTaught: [/skin the cat/i],
  },
  {
    title: 'deadlift day',
    transcript: `[0:00] Good to see you. Deadlifts and friends. If you slept badly, take ten percent off, nobody's counting.
[0:14] Main lift, the conventional deadlift. Bar over the middle of the foot, grip just outside your legs. Chest up, push the floor away, stand tall. We're doing four triples at eighty percent, and take three minutes after each.
[0:45] If your back starts to round, that's the set over. Second up, front squats. Elbows high, bar on the shoulders. Sit straight down, knees out. Three sets, five reps, two and a half minutes between.
[1:15] Don't drop your elbows. Then we're onto barbell rows, bent over. Pull to your belly button, lower under control. Eight to ten, for three. Same rest, no, ninety seconds is plenty.
[1:45] Rack's free. Hip thrusts are next. Shoulders on the bench, bar in your hip crease. Drive up, squeeze for one, down. Three twelves. Chin tucked.
[2:10] And for dessert, farmer's carries. Heavy. Thirty metres there, thirty back, three trips. Tall as a lamp post. No curls, it's a deadlift day.`,
    taught: [
      { name: /deadlift/i, dose: { sets: 4, reps: 3, rest: 180 } },
      { name: /front squat/i, dose: { sets: 3, reps: 5, rest: 150 } },
      { name: /row/i, dose: { sets: 3, reps: [8, 10], rest: 90 } },
      { name: /hip thrust/i, dose: { sets: 3, reps: 12, hold: 1 } },
      { name: /farmer/i, dose: { sets: 3, metres: 30 } },
    ],
    notTaught: [/^curl/i],
  },
  {
    title: 'chair class with a band, without punctuation',
    transcript: `[0:00] hello my dears have you all got a band and a sturdy chair no wheels please and shoes that grip
[0:14] we'll begin with seated marches sit tall near the front of the chair and lift one knee then the other like you're in a parade twenty in total
[0:38] very good and now chest press with the band pass the band behind your back hold the ends push your arms out straight and bring them back slowly ten please breathe out as you push
[1:05] don't hold your breath dears next is the seated row loop the band round your feet sit up pull your elbows back and squeeze ten again mind it doesn't slip off your shoe
[1:35] lovely job how's your grandson Maureen okay sit to stands feet back lean forward and up you come use your hands if you need to five of those rest a minute and another five
[2:05] if you go dizzy sit back down after that heel raises hold the chair up on your toes and down slowly twelve
[2:30] and lastly ankle circles sit down one foot off the floor ten circles each way swap feet bless you all see you on Monday`,
    taught: [
      { name: /march/i, dose: { reps: 20 } },
      { name: /chest press/i, dose: { reps: 10 } },
      { name: /row/i, dose: { reps: 10 } },
      { name: /sit to stand/i, dose: { sets: 2, reps: 5, rest: 60 } },
      { name: /heel raise/i, dose: { reps: 12 } },
      { name: /ankle circle/i, dose: { reps: 10, sides: true } },
    ],
    notTaught: [],
  },
  {
    title: 'intervals at home',
    transcript: `[0:00] Hi team. Forty on, twenty off, four exercises, three rounds, a minute between rounds. Clear the rug, mind the cat.
[0:14] The four are squat thrusts, speed skaters, plank jacks and high knees. I'll show you each one, then we go.
[0:30] One. Squat thrusts. Hands on the floor, jump your feet back, jump them in, stand. Step it if your wrists or back complain. And go. Push. And off.
[1:00] Two. Speed skaters. Leap side to side, land on one leg, sweep the other behind. Land soft, knee in line with the toes. Go. Stay low. And off.
[1:30] Three, plank jacks. Plank, hands under shoulders, jump the feet wide and in. Don't let your hips bounce. Go. Breathe. And off.
[2:00] Four, high knees. Stand tall, drive the knees up, quick feet. March it for low impact. Go. And rest, a minute, drink.
[2:30] Round two. Squat thrusts, go. Faster feet. And off. Skaters. Stay low. And off.
[3:10] Jacks now, go. Tight middle. Off. And knees. Up, up, up. Done. No burpees today, I'm feeling kind.`,
    taught: [
      { name: /squat thrust/i, dose: { sets: 3, work: 40, rest: 20 } },
      { name: /skater/i, dose: { sets: 3, work: 40, rest: 20 } },
      { name: /plank jack/i, dose: { sets: 3, work: 40, rest: 20 } },
      { name: /high knee/i, dose: { sets: 3, work: 40, rest: 20 } },
    ],
    notTaught: [/burpee/i],
  },
  {
    title: 'runners in the gym',
    transcript: `[0:00] Alright runners. Legs and hips, half an hour, then you can go and moan about your shoes.
[0:12] First off, split squats. Back foot on the floor, weight in the front heel. Drop straight down, drive up. Eight each leg, two sets, a minute in between.
[0:36] Knee over your second toe. Okay, single leg deadlifts. Stand on one leg, soft knee, tip forward, back leg long. Touch the wall if you're wobbly. Six to eight a leg. Twice.
[1:05] Calf raises on the step. Heels hang off, rise for two, down for three. Twenty each side. If your Achilles is sore in the morning, halve it.
[1:32] Now then, hip hitches. Stand sideways on the step, one leg hanging, drop that hip, hike it up. Fifteen per leg. Keep the knee straight.
[1:58] We used to do box jumps here. Copenhagen planks instead. Top leg on the bench, lift your hips. Ten seconds each side, build up to twenty. Bend the knee to make it easier.
[2:25] And the last, a glute bridge, one leg. Push through the heel, don't arch. Same again, fifteen per leg. Go home.`,
    taught: [
      { name: /split squat/i, dose: { sets: 2, reps: 8, sides: true, rest: 60 } },
      { name: /single leg deadlift/i, dose: { sets: 2, reps: [6, 8], sides: true } },
      { name: /calf raise/i, dose: { reps: 20, sides: true } },
      { name: /hip hitch/i, dose: { reps: 15, sides: true } },
      { name: /copenhagen/i, dose: { hold: 10, sides: true } },
      { name: /glute bridge/i, dose: { reps: 15, sides: true } },
    ],
    notTaught: [/box jump/i],
  },
]
