/**
 * How much the word in front of a gap or behind it speaks for a comma or a full stop there, against no mark: the natural log
 * of odds, in halves. Fitted by logistic regression on invented classes written with punctuation; words not listed say nothing.
 */
import type { MarkWeights } from './break-classes.ts'

export const BREAK_WORDS = {
  /** The word in front of the gap. */
  before: {
    comma: [
      [2.5, 'right up'],
      [2, 'hurts those'],
      [
        1.5,
        `
          armpit back clock close ear everyone fine finish flat fours land lift more no plank rack rest six these
          thread today toes top ups
        `,
      ],
      [
        1,
        `
          18 2 24 again belly bird bottom breathing bridge button climbers coming dog dumbbell eyes find forward
          hamstrings in jump jumps lot mat metres neck new nine off on one pain past quick rows side sideways sit
          skaters skips slowly squats that three thrusts together was well years yet
        `,
      ],
      [
        0.5,
        `
          anything apart are arm arms around away been bench blanket body box breathe breaths curls down dumbbells
          ears eight fold four going gone good hanging harder height hello here hi high hinge hips hundreds it
          kettlebell knee kneeling ladder length little lower morning much ninety nose okay out percent pinch
          pressure push reps rings rise row same seven shift short shoulders sides so strokes support swing switch
          ten them there thigh this through time tonight turn twist two walk wall week while work
        `,
      ],
      [
        -0.5,
        `
          30 4 5 above an any anyone arch be because before belt bend bent bit blood bring bugs bum bump but by call
          cat ceiling count cow deadlift deadlifts do doesn't doing draw drive drop each easier elbow enough ever
          every everything face fall fingers first fist fists foot forearms from get grab grip had halo hand handle
          hands have head heart heavy higher hip hold hug hundred i've instead is knees know lean leave left let
          let's lifts like line look lovely make me mine's minute move my nearly need never next nobody nobody's
          number onto open opposite other outside park pause people pose press pull put raises reach ribs rush shake
          should skip slides slower small speed station stays steady swap than thank then there's they think toe
          tomorrow too training twice uh under upside use want watching way we we'll we're when which will won't
          wrists you you'll you're you've yourself
        `,
      ],
      [
        -1,
        `
          6 all as asking behind bell best between breath can't chair change come day dead don't easy end er feel
          feels feet hear how i'm into it's jacks keep legs low mine nothing once only or please really see shins
          shoulder slow some somebody stay still straight straps take that's times touch twenty weeks weights what
          where whole yeah
        `,
      ],
      [-1.5, 'a about at big can elbows for go got half i if just last not rate slide squat the thirty um your'],
      [-2, 'and of with'],
      [-2.5, 'forty now to'],
    ],
    stop: [
      [2.5, 'those'],
      [2, 'back eight higher instead rounds these up well'],
      [1.5, 'asking blanket home jump length more nose over seven side ten that three twelve two water'],
      [
        1,
        `
          1 20 24 30 again another arch behind between box bridge bum clock cushion down drink drop dumbbells elbow
          fifteen fingers five four go good it ladder left leg line middle nice off one open out pillow pose push
          quiet raises reach sides six skaters slide slowly switch them this through too twice want wants
        `,
      ],
      [
        0.5,
        `
          apart away ball been belt bit bottom breathe breaths bugs cat ceiling climbers close cow dead done each
          ear ears end enough everything fall far finish flat float fold front grip hang heavy heel hello here hug
          hundreds in lot lovely low mine morning much nearly neck need nine nothing other plank pull quick raise
          rest right rings round rush slower squats stretch support tall taps toes tomorrow top towel walk welcome
          width work
        `,
      ],
      [
        -0.5,
        `
          18 2 3 above after always an any anyone aren't arms be because bench best bird blades blood both but call
          change chin clean coming did do doesn't doing dumbbell er ever every everyone eyes fast feet fine fist
          foot forearm fours from gently grab had half handle hanging has heart hi hip hips hundred hurts i i'm i've
          isn't jacks kettlebell kneeling knees know land lean leave legs let let's look lower make me metres my no
          nobody nobody's number once only opposite outside pain percent pinch put rack reps ring rise rows second
          sharp skip slow small soft some something speed split stays steady step straight swap than thank there's
          they thing think thrusts time times touch turn uh use wall watching we'll we're week weight weights when
          where while wrist yeah you you'll you've yourself
        `,
      ],
      [
        -1,
        `
          about bar bent big body button by can can't chest come deadlift dog exercise feels find first forearms
          forward get goes halo have hear hinge how hurt into it's jumps keep knee lifts next not onto or past pause
          please press pressure really row same seat see shins short should sideways sit slides somebody sore squat
          station stay stop that's then thigh tight tonight tummy twist was we weeks what whole will won't yet
          you're
        `,
      ],
      [-1.5, "a as at bell don't everybody feel forty got head if last minute minutes now people rate so with your"],
      [-2, '10 4 and for just ninety of take the um'],
      [-2.5, 'to'],
      [-3, '5 6 8'],
    ],
  },
  /** The word behind the gap. */
  after: {
    comma: [
      [2.5, 'no then'],
      [2, "both have hike nobody's same"],
      [1.5, '10 er keep long look other slow stop which'],
      [
        1,
        `
          20 24 after another any arms bar because big bird bye check do doesn't drink ear ears goblet good grip
          heels hi high light lovely mine mine's nearly nice number only opposite pause push put rack small sort
          squeeze thank that's thighs top tuck twice welcome wider
        `,
      ],
      [
        0.5,
        `
          2 22 3 30 6 body bottom breathe bring chest dead don't drop dumbbell elbows eyes feet fist forearm go grab
          has head heel hips i've it's jump jumping just last lean let let's like march never ninety nobody not
          nothing once or park pillow please quick rate right rings roll rows set seven shake shins shoulders sit so
          soft some split squats step switch there's they toes um umbrella use walk we're we've years
        `,
      ],
      [
        -0.5,
        `
          1 always anyone apart arch are ball be before bench bit blanket box breaths button call can can't cat
          child's chin circles clean close coming cushion deadlifts done door draw elbow enough evening everything
          exercise fall far feels fifteen find fine finish fists flat float floor fold for forearms forty fours
          front gently going gone got halo hamstrings hand handle hands hanging he heavy height higher home hug
          hundred hundreds hurt hurts i'm in isn't kettlebell know leave left length level line looking low middle
          minute minutes moving need off okay onto past people pick pinch pressure raise rest ribs ring rounds
          second seconds sets short should sides slower somebody standing station stay still strokes swap tall ten
          than them thing thirty this tight till times tip together tomorrow tonight touch towel tummy turn twelve
          twist uh under up upside used want wants warm was week what while wide width will work would wrist yeah
          yet you're you've yourself
        `,
      ],
      [
        -1,
        `
          5 8 and arm away behind bell between blood breath change curls doing easy everyone feel first forward goes
          half hip hold instead into it lift more morning move neck nine on open out pop press side squat start
          stays straight the think through time today too two until wall way weeks were where who's you
        `,
      ],
      [-1.5, "again at blades each every foot hello here hinge knee next one per row stretch that there you'll your"],
      [-2, 'leg now of when'],
      [-2.5, 'as is to'],
    ],
    stop: [
      [2.5, 'my'],
      [2, '5 8 big have how no okay only same'],
      [
        1.5,
        `
          1 3 before breathe bye deadlifts ears handle heart hold if low mine's other rate second see somebody thank
          then warm we'll we've well
        `,
      ],
      [
        1,
        `
          20 4 6 anyone bell box cat chest chin did elbow elbows everything feet fists front halo hamstrings hands
          heels hinge hug i'll i've keep lean light little look nearly nobody's pain push right shake shoulders
          skaters squats steady step stop straps tight tuck tummy want wrist wrists
        `,
      ],
      [
        0.5,
        `
          10 about bar belly bench bottom breath bring change child's cushion don't done draw drink eight everybody
          fifteen finish five fold forearms from good holding i i'm it's jump knees land last left legs lovely mine
          minute moving nice off onto park pick pop pull reach ribs rings rise seven sharp shift shins sit six slide
          some speed squat squeeze stand start swap ten there's till tip toe top touch twelve twice umbrella walk
          wall where who's yeah you'll
        `,
      ],
      [
        -0.5,
        `
          22 24 an and another arch arms ball be because bend bent bird both button by call can check come curls
          dead doesn't doing down drop dumbbell easier easy enough er everyone feel feels fine fist floor forearm
          forty go going gone got grip half hang has he head heel hello high higher hundred hundreds in into knee
          know leave length level lift looking lower metres minutes month much neck need never nine ninety nothing
          now once opposite out past pillow please pressure quiet rack really ring round rounds seat sets should
          side sides skip slow slower so sort split standing stay stays strokes support swing switch take that the
          thigh think time times tomorrow turn twenty two uh up upside wants was way we we're week weeks weights
          welcome what when which while wide width will won't would years yet you yourself
        `,
      ],
      [
        -1,
        `
          a always apart are arm as behind between bit blades blanket breaths but deadlift door dumbbells each flat
          float for forward fours gently height here hip me morning open per quick rest rows seconds straight than
          them there this thread to today towel under until were with your
        `,
      ],
      [
        -1.5,
        `
          2 again at away close first goes hand home instead it like more next nobody not on or row shoulder slowly
          stretch together too use work you're you've
        `,
      ],
      [-2, 'foot get of one put'],
      [-2.5, 'is leg'],
    ],
  },
} as const satisfies Record<string, MarkWeights>
