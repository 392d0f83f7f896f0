/**
 * How much each feature of a gap between words (break-features.ts) speaks for a comma or a full stop there, against no mark:
 * the natural log of odds. By the sign, the words or classes that have it. Fitted by tests/fit/fit-breaks.ts, not by hand.
 */
type Rows = readonly (readonly [weight: number, of: string])[]

export const BREAK_WEIGHTS: Readonly<Record<'comma' | 'stop', Readonly<Record<string, Rows>>>> = {
  comma: {
    always: [[-0.25, 'yes']],
    before: [
      [1, 'again fine laps no okay please right tall up well'],
      [
        0.75,
        `
          2 8 back bow breathe breathing clock door down hat height home horns jean listen locked lot lunges metres
          percent point ready recovery rows rule saturday six slowly sorry stop today together tray ups view
        `,
      ],
      [
        0.5,
        `
          1 10 5 ache altogether armpit around backwards banana barking bear bent blades blocks board book boring
          bottom bounces brace calves carol charity circuit climbers close college cradles crosses cushion day
          denise desk distance dog drills duck dull dum ears eights everyone extend faint fifth finish finished
          flat forwards four frame friday friend front gradually grapevine happens heartburn heaving heavy hiya
          honestly hours hundreds jab kneeling kyle laces lad ladies land least left lengths level lift mailbox
          many marged mat maureen month more mornings muscle name neck new numbers off oh ones place plank pressure
          raise ray reds remember reps rest rhythm ringing sets seven shoulders side sides simple sitting sixes
          smooth song squeaks started stations steps stool strain strong swimmy tables tabletop talks there these
          thing thread through tied tiles tip tiptoes toboggan tonight top turning two walking week wheel wide
          width work yes yet
        `,
      ],
      [
        0.25,
        `
          9 across actually afterwards age alright anchor ankles apart awake balcony banister bar barefoot basics
          beat bed belly bench better bleeding block body boils bottle bounce bouncing bound bowl boxing break
          breakfast breather bridging bugs burn butt button challenge clam clinic club core county cramp cried
          crisp crossed deadlift deadlifts derek dips disappointed dizziness doddle done drill drink drop dry
          dumbbell dumbbells ear effort eight either elevator evening everybody faces favourite fifteen flaring
          flatten floor fluid flying forth forward fours fraction fresh gap gareth guy guys hamstrings hangers
          harder haul heard heating here hills him himself hold hooks hop horizon hum ice incline insurance it
          joining joking jug k kneecap kneel ladder length line literally lively living locks loo loose love low
          manage marching medium middle midwife mirror mo moment monday move moving much needle needles normal offs
          one open opened opening option out pain pair panic park pence pendulum plates pockets position promise
          puddle puff quads ratio red resistance resting righto ropes round row rower rushing sandwich scoop seat
          seconds shelf shout sideways sinking skaters sleepy slightly slow soon sound spikes spine splits squash
          squats squish stacked stage standing stands stare steady step stopped stops strength struggling superman
          support sure surprised sweep swims swings tailbone talking team that thin thirteen those ticking
          tightness tilts tin tiny toe toes total trampoline trouble truck tucked turn twists upright waist wash
          weddings widen wider window woman working worktop worry year years
        `,
      ],
      [
        -0.25,
        `
          'em 15 3 4 500 500s above after always an another any anyone anything are asking baby back's bar's
          barbell be beans blood blue body's books both brave brilliant bring bum bum's bump burpees bus butt's can
          car chairs chalk change chest christmas cleans cobra collar complaining cool council counts couple crease
          direction does doesn't dog's dollars dropping eighty else euro ever every exam except exercise facing
          fall fancy far faster feeling few fifty fingers forearms forgotten free frog fun garage gets goal goes
          good gorgeous gossip grab grass great grow had hair hand handbags hands hang happy hard he he'd head's
          heals heart heavier heel heels his holds hopping hug i'd inches inner inwards is jacket jacks jeans keeps
          kerb kissing knee's knuckles lands laugh laughed letter lips longer looking looks lose lost loud lunge
          makes maybe mid mile mine's minute's my myself near need ninety nobody nobody's noodle number old onto
          operated other outside pace palms past piece pinches pins planted plate pocket pop pose post pretend
          prize proper purple push quickly quid quiet quietly rate real really rep rings rock roll rolls rugby run
          runners rush s safeties safety sag sat saying shake shape should shoulder shove sigh since single sixty
          slower start starts straighten strap strict strokes sunday taken takes tap thing's thought thousand thumb
          tomorrow too touch tough towards trainers trip tuck uh um until vertical very wants was watching we're
          weekend went whatever wherever while will willow without wonder would written you'd you'll
        `,
      ],
      [
        -0.5,
        `
          a about ago anybody as asked at backside bag bars because before bell bend best bridges but by call can't
          come comes crate daughter dead deep do doing don't elbows empty everything feel feels from full get go
          handle have hear higher holding hundred i i'm i've if into it's keep kick late leave leg's legs let like
          list make me moan not now o'clock once only opposite or phone put questions rail said same screen shins
          shoes sleep small some somebody somebody's squeezes stay stays stick straight swing tell than thank
          that's the them there's they they've think thinks third till under us use want watch we we'll when
          whenever where who whole why you you're you've your yourself
        `,
      ],
      [
        -0.75,
        `
          all and big er for forty got half how last means of one's says sheet slide still take times told twenty
          with
        `,
      ],
      [-1, 'just say second see to what'],
    ],
    after2: [
      [1, "dum isn't neither"],
      [0.75, "jacks real sides standing's stop them whoever's"],
      [
        0.5,
        `
          1 22 achilles across almost an bent body can carries cheat climbers counting days doesn't drag drive euro
          explode face fast felt few finished foot hand here's kneel know lad lengths lives lower mine mississippi
          necks nobody nobody's nothing one's ones osteoporosis parked pointing pump record rolled romanian row's
          saves should steam taps thick thing toboggan tucked turned very was whatever whichever yourself
          yourselves
        `,
      ],
      [
        0.25,
        `
          'em 34 6 90 ago all allowed another anybody arm's asks assistant away bad balance bang beautiful body's
          bounce boxing break breaths broom can't carrying chain changed chase chasing check cheeks coming control
          count counts crawl crawls cushion desk dips dizziness dogs drills drink drives dropping dumb during ease
          easier easily eights either elephant enough falls fancy favourite file find flat flying folded frozen
          gave glute gorgeous granddaughter gravity greasy guys has hay head's heads heel helps heroes holding home
          honestly hopeless hour hovering hum inches invisible it'll jog jogged join keeps kissing lands laundry
          leaves leg leg's letter lifting lighter loads lots love meant melt minds minute minutes more move moved
          nearly neighbours nice notch odd only operated our palm panic partner pence people pew press pretend
          pulls quiet ran ray really recovery relax remember return rolling rounds rushing sagging saving says
          screen serious set sets shame shove single skaters smaller snow soft soften softly somebody's sort squats
          squish stands sticks stomping stopped stretch stride swings tall teapot these those thought tight
          tightrope travelling trip tss turns twists underneath upright upside using warm watch watching weight's
          what wheel why woman won won't yes
        `,
      ],
      [
        -0.25,
        `
          12 3 8 about above add again ahead am and ankle arms around awake babies backs bag bales band below belt
          bench better big bird bit blow board bridges bring build calf cardigan carried chalk cheer circles clear
          coach cold comes comfy couldn't couple degrees does door elbows eleven empty end ends er even every
          finish first flamingo fling forget forgotten four fours friends gently get gets go goblet good grip half
          hands hated haven't he's heard heart heels hello her here hip's his holds hollow hug hundreds hurts i
          i'll i've inside instead into joking jumping kneeling lazy lead lean light lock lovely made magic many
          mat maybe mind mine's moose morning most moves neck need normally nose now number of one onto other
          otherwise overhead pause percent pick pinched plonking points position postman pounds pull push put race
          racing reds rep ribs right rock round rowed sag save say scoop seat shake she she's shouldn't shrugging
          side sideways sit sits skip sled snap socks somewhere sore sorry spread squash standing started steady
          still stops straps strokes sure swing take taken takes talk ten tens than thank their they'd thighs third
          thirty throw thrusts thumbs tighten time too top touch touches track tug turning twist uh used went wet
          who whole wider width with working would written wrong yank you'd your
        `,
      ],
      [
        -0.5,
        `
          after along always any bending both bottom breathe but came chest come day do doing downs drop dumbbells
          each ever everyone fall feel feet fifteen fine forty from front give had head height high hips i'm legs
          let's lie like little lying march my next no normal okay once outside park phone please ring same second
          show stay straight that'll then things this tonight um ups use walk want we're week weight when you
          you're
        `,
      ],
      [-0.75, '10 bend did left metres or reach so stand today way'],
    ],
    opening: [
      [1, 'and>because because>because pronoun>never'],
      [
        0.75,
        `
          and>contraction article>auxiliary auxiliary>pronoun because>auxiliary contraction>never never>article
        `,
      ],
      [
        0.5,
        `
          and>and and>opener and>pronoun contraction>article contraction>contraction contraction>manner manner>part
          manner>pronoun never>manner number>manner opener>auxiliary opener>kit opener>unit part>ing part>manner
        `,
      ],
      [
        0.25,
        `
          and>verb because>never because>other because>verb kit>article ly>because manner>end manner>kit
          never>contraction never>preposition never>verb number>article number>ing number>number number>other
          opener>article part>preposition pronoun>auxiliary verb>and verb>article
        `,
      ],
      [
        -0.25,
        `
          and>auxiliary article>and article>article article>other article>part article>verb auxiliary>manner
          auxiliary>number auxiliary>opener auxiliary>part because>ing because>part contraction>opener ing>article
          ing>because ing>opener ing>other ing>preposition ing>pronoun kit>and kit>auxiliary kit>because
          kit>contraction kit>number kit>part kit>unit manner>article manner>ing manner>manner manner>opener
          manner>preposition never>ly never>unit number>auxiliary number>because number>never opener>manner
          opener>opener opener>pronoun other>end other>ing other>kit other>manner other>number other>other
          other>preposition other>unit part>article part>kit part>unit preposition>manner preposition>part
          pronoun>manner pronoun>part pronoun>pronoun unit>article unit>auxiliary unit>because unit>never
          unit>other unit>part unit>preposition unit>pronoun verb>ing verb>never verb>part verb>verb
        `,
      ],
      [
        -0.5,
        `
          and>other and>part article>kit article>preposition article>pronoun auxiliary>auxiliary auxiliary>ing
          auxiliary>verb because>article because>manner because>opener because>pronoun contraction>pronoun ing>and
          ing>contraction ing>number ing>part ing>verb kit>kit kit>verb manner>because manner>contraction
          manner>other never>auxiliary number>verb opener>never opener>other opener>preposition other>and
          other>auxiliary other>because other>contraction other>never other>verb part>and part>auxiliary
          part>number part>pronoun part>verb preposition>and preposition>article preposition>auxiliary
          preposition>ing preposition>kit preposition>never preposition>number preposition>opener preposition>other
          preposition>pronoun preposition>unit pronoun>and pronoun>article pronoun>because pronoun>contraction
          pronoun>end pronoun>ing pronoun>number pronoun>opener pronoun>preposition unit>and unit>contraction
          unit>manner unit>opener unit>verb verb>because verb>number verb>opener
        `,
      ],
      [
        -0.75,
        `
          auxiliary>other auxiliary>preposition manner>verb number>contraction part>because part>contraction
          preposition>verb verb>contraction
        `,
      ],
    ],
    closing: [
      [1, 'contraction>pronoun'],
      [0.75, 'manner>kit number>number part>manner'],
      [
        0.5,
        `
          and>kit and>ly article>unit contraction>opener kit>opener ly>article number>opener number>unit
          opener>opener preposition>manner preposition>opener preposition>pronoun unit>kit unit>unit verb>unit
          verb>verb
        `,
      ],
      [
        0.25,
        `
          and>number and>part article>kit article>never article>verb contraction>ly ing>because ing>manner
          ing>opener ing>pronoun kit>manner manner>number manner>part never>ly number>ing opener>ing opener>kit
          opener>pronoun other>ly other>opener preposition>other pronoun>ly pronoun>opener unit>manner unit>number
        `,
      ],
      [
        -0.25,
        `
          and>and and>unit article>and article>article article>number article>opener article>preposition
          article>pronoun auxiliary>auxiliary auxiliary>because auxiliary>kit auxiliary>number
          auxiliary>preposition because>auxiliary because>other because>preposition because>verb
          contraction>because contraction>ing end>opener ing>auxiliary ing>kit ing>part ing>preposition kit>article
          kit>because kit>contraction kit>kit kit>preposition manner>article manner>contraction manner>opener
          manner>preposition manner>unit never>article never>opener never>verb number>contraction number>manner
          number>pronoun opener>auxiliary opener>contraction other>kit other>never other>part other>preposition
          other>verb part>opener part>pronoun preposition>and preposition>never preposition>part preposition>verb
          pronoun>auxiliary pronoun>because pronoun>contraction pronoun>kit pronoun>other pronoun>unit
          unit>auxiliary unit>contraction unit>pronoun verb>other verb>part verb>preposition verb>pronoun
        `,
      ],
      [
        -0.5,
        `
          and>article and>contraction and>pronoun and>verb article>auxiliary auxiliary>article auxiliary>never
          auxiliary>verb because>article because>contraction because>manner contraction>article
          contraction>auxiliary contraction>manner contraction>number contraction>preposition contraction>verb
          ing>and ing>article kit>and kit>auxiliary manner>and manner>because manner>pronoun manner>verb never>ing
          never>preposition number>and number>auxiliary number>because number>preposition opener>part other>article
          other>auxiliary other>because other>contraction part>and part>article part>auxiliary part>because
          part>contraction part>ly part>never part>part preposition>article preposition>auxiliary
          preposition>because preposition>contraction preposition>preposition pronoun>and pronoun>article
          pronoun>part unit>and unit>because verb>and verb>article verb>because verb>contraction verb>number
        `,
      ],
      [-0.75, 'article>manner because>pronoun kit>part other>and part>unit'],
    ],
    around: [
      [1.25, 'article>other>article article>verb>article'],
      [
        0.75,
        `
          and>number>and and>other>contraction and>other>number article>ing>article article>kit>article
          article>kit>number article>manner>because article>other>pronoun article>part>part auxiliary>ing>other
          contraction>manner>verb kit>opener>preposition kit>other>other number>number>part
          number>number>preposition number>other>number opener>manner>verb opener>unit>opener other>verb>and
          part>other>part preposition>article>and preposition>number>preposition preposition>number>pronoun
          pronoun>auxiliary>and pronoun>preposition>verb verb>verb>verb
        `,
      ],
      [
        0.5,
        `
          and>opener>article and>part>and article>auxiliary>other article>kit>other article>kit>part
          article>kit>pronoun article>number>article article>opener>manner article>part>article article>part>never
          article>part>number article>preposition>because article>unit>pronoun article>verb>pronoun
          auxiliary>other>and because>other>article contraction>never>other contraction>opener>and
          contraction>opener>contraction contraction>other>verb ing>number>number ing>preposition>other
          ing>preposition>verb ing>pronoun>article ing>verb>number manner>kit>preposition manner>manner>because
          manner>manner>other manner>other>auxiliary manner>other>because manner>other>part
          manner>preposition>manner manner>preposition>preposition never>other>contraction never>other>verb
          never>verb>verb number>number>never number>opener>verb number>other>article number>other>unit
          number>part>other number>preposition>preposition number>unit>number number>unit>other number>unit>pronoun
          number>unit>unit number>verb>and number>verb>number opener>because>article opener>manner>manner
          opener>number>verb opener>other>never opener>other>other opener>preposition>and other>because>opener
          other>because>other other>ing>because other>ing>part other>kit>contraction other>kit>manner
          other>manner>number other>number>contraction other>number>number other>opener>pronoun other>opener>unit
          other>part>article other>part>contraction other>part>pronoun other>preposition>and
          other>preposition>never other>pronoun>and other>pronoun>verb other>unit>and other>unit>preposition
          other>verb>opener part>manner>other part>manner>part part>number>number part>part>verb
          part>preposition>verb part>verb>and preposition>and>and preposition>ing>manner preposition>ing>other
          preposition>manner>preposition preposition>number>contraction preposition>opener>opener
          preposition>other>and preposition>other>manner preposition>other>verb preposition>part>verb
          preposition>preposition>preposition preposition>pronoun>article preposition>pronoun>preposition
          pronoun>number>number pronoun>opener>pronoun pronoun>other>and unit>manner>and unit>opener>other
          unit>other>article unit>other>contraction verb>manner>opener verb>manner>verb verb>number>number
          verb>opener>number verb>other>kit verb>other>opener verb>preposition>other verb>preposition>part
        `,
      ],
      [
        0.25,
        `
          and>auxiliary>article and>kit>preposition and>manner>article and>never>other and>number>other
          and>number>pronoun and>opener>other and>opener>verb and>other>opener and>part>manner and>part>part
          and>preposition>opener and>preposition>verb and>verb>and and>verb>number article>ing>and article>ing>part
          article>kit>contraction article>kit>never article>number>contraction article>number>part
          article>opener>and article>opener>because article>other>auxiliary article>other>manner
          article>preposition>opener article>preposition>preposition article>unit>auxiliary article>unit>number
          article>verb>number auxiliary>article>article auxiliary>ing>verb auxiliary>number>article
          auxiliary>opener>verb auxiliary>other>ing auxiliary>other>manner auxiliary>other>other
          auxiliary>preposition>preposition auxiliary>preposition>pronoun auxiliary>pronoun>number
          auxiliary>pronoun>preposition auxiliary>verb>verb because>contraction>preposition
          because>other>preposition contraction>ing>number contraction>ing>verb contraction>other>contraction
          contraction>other>never contraction>other>other contraction>pronoun>and contraction>pronoun>contraction
          contraction>pronoun>other end>opener>article ing>article>article ing>because>contraction ing>manner>other
          ing>number>and ing>opener>other ing>other>and ing>other>pronoun ing>preposition>and
          kit>manner>preposition kit>opener>other kit>other>contraction kit>other>manner kit>other>pronoun
          kit>preposition>manner kit>pronoun>other kit>verb>preposition manner>kit>verb manner>manner>verb
          manner>number>number manner>number>preposition manner>number>verb manner>opener>verb manner>other>number
          manner>part>preposition manner>preposition>because manner>preposition>part manner>verb>other
          never>ing>contraction never>other>other never>preposition>pronoun number>and>article number>and>other
          number>article>verb number>kit>other number>manner>number number>number>article number>number>verb
          number>opener>pronoun number>other>manner number>part>verb number>preposition>contraction
          number>preposition>number number>unit>and opener>and>other opener>and>preposition opener>ing>other
          opener>number>and opener>number>manner opener>opener>verb opener>other>part opener>preposition>number
          opener>unit>article opener>unit>other opener>unit>preposition opener>verb>other opener>verb>verb
          other>article>contraction other>article>preposition other>article>verb other>auxiliary>manner
          other>ing>auxiliary other>kit>auxiliary other>kit>verb other>manner>because other>manner>other
          other>never>verb other>number>article other>number>because other>number>pronoun other>opener>opener
          other>opener>part other>other>article other>other>because other>other>contraction other>other>ing
          other>other>number other>other>verb other>part>auxiliary other>preposition>because part>and>because
          part>ing>pronoun part>manner>number part>manner>opener part>opener>opener part>other>auxiliary
          part>other>kit part>other>number part>other>other part>other>pronoun part>other>verb part>part>part
          part>preposition>auxiliary part>preposition>contraction part>preposition>manner part>preposition>other
          part>preposition>part part>verb>because part>verb>contraction part>verb>ing part>verb>verb
          preposition>and>article preposition>and>preposition preposition>article>pronoun
          preposition>manner>article preposition>manner>unit preposition>number>article preposition>number>manner
          preposition>opener>and preposition>opener>other preposition>part>article preposition>part>part
          preposition>part>unit preposition>preposition>and preposition>preposition>contraction
          preposition>pronoun>part preposition>pronoun>pronoun preposition>pronoun>verb preposition>unit>article
          preposition>unit>contraction preposition>verb>other preposition>verb>part pronoun>auxiliary>pronoun
          pronoun>because>other pronoun>contraction>ing pronoun>manner>part pronoun>manner>unit
          pronoun>opener>article pronoun>opener>other pronoun>opener>unit pronoun>other>auxiliary
          pronoun>other>never pronoun>preposition>other pronoun>verb>because pronoun>verb>ly pronoun>verb>number
          pronoun>verb>pronoun unit>article>verb unit>manner>article unit>number>opener unit>other>other
          unit>part>never unit>preposition>number unit>preposition>other unit>preposition>pronoun
          unit>preposition>verb unit>unit>other verb>because>other verb>ing>manner verb>manner>article
          verb>manner>part verb>opener>and verb>opener>article verb>preposition>auxiliary verb>preposition>never
          verb>preposition>verb verb>pronoun>never verb>unit>article
        `,
      ],
      [
        -0.25,
        `
          and>article>other and>number>article and>number>manner and>number>preposition and>number>unit
          and>opener>part and>opener>pronoun and>other>auxiliary and>other>part and>other>preposition
          and>part>other and>preposition>part and>preposition>pronoun and>pronoun>auxiliary and>pronoun>other
          and>pronoun>verb and>verb>manner and>verb>preposition and>verb>pronoun and>verb>verb
          article>article>other article>auxiliary>article article>kit>manner article>kit>opener article>kit>unit
          article>manner>kit article>manner>preposition article>number>other article>number>preposition
          article>number>unit article>number>verb article>other>other article>part>and article>part>opener
          article>preposition>article article>preposition>manner article>preposition>part article>preposition>unit
          article>verb>and article>verb>preposition auxiliary>article>other auxiliary>article>verb
          auxiliary>ing>preposition auxiliary>ly>other auxiliary>number>number auxiliary>opener>and
          auxiliary>other>because auxiliary>other>number auxiliary>other>pronoun auxiliary>other>verb
          auxiliary>preposition>article auxiliary>preposition>number auxiliary>pronoun>pronoun
          auxiliary>verb>pronoun because>article>other because>article>part because>contraction>ing
          because>contraction>manner because>contraction>never because>contraction>other because>ing>other
          because>manner>because because>other>auxiliary because>other>because because>other>opener
          because>pronoun>auxiliary contraction>auxiliary>other contraction>ing>article contraction>ing>manner
          contraction>manner>article contraction>opener>article contraction>opener>verb contraction>other>manner
          contraction>other>preposition contraction>preposition>pronoun contraction>pronoun>verb end>opener>opener
          end>opener>pronoun ing>article>other ing>other>contraction ing>preposition>contraction
          ing>preposition>preposition ing>preposition>pronoun ing>pronoun>preposition kit>and>verb
          kit>because>contraction kit>because>pronoun kit>other>and kit>part>article kit>preposition>article
          kit>unit>article kit>verb>verb manner>article>other manner>because>contraction manner>manner>article
          manner>manner>manner manner>opener>preposition manner>opener>pronoun manner>other>other manner>other>verb
          manner>verb>article manner>verb>number manner>verb>preposition manner>verb>pronoun
          never>other>preposition never>verb>article never>verb>preposition never>verb>pronoun number>manner>unit
          number>number>unit number>other>other number>other>preposition number>part>ing number>part>preposition
          number>preposition>article number>preposition>opener number>unit>because number>unit>manner
          number>unit>opener number>verb>preposition opener>manner>other opener>number>article
          opener>number>contraction opener>number>preposition opener>opener>opener opener>other>contraction
          opener>other>kit opener>part>and opener>part>preposition opener>preposition>other opener>preposition>verb
          opener>verb>article other>and>never other>and>number other>and>pronoun other>article>and
          other>article>ing other>article>opener other>auxiliary>number other>auxiliary>preposition
          other>auxiliary>pronoun other>auxiliary>verb other>because>number other>because>pronoun
          other>contraction>article other>contraction>ing other>contraction>number other>contraction>opener
          other>contraction>other other>ing>and other>ing>manner other>kit>article other>kit>because
          other>kit>number other>manner>and other>manner>manner other>never>other other>number>and
          other>number>auxiliary other>number>manner other>opener>manner other>opener>number other>other>auxiliary
          other>other>never other>other>opener other>other>preposition other>other>unit other>part>because
          other>part>never other>part>verb other>preposition>pronoun other>pronoun>article other>unit>because
          other>unit>number other>verb>never other>verb>pronoun part>and>part part>article>other
          part>auxiliary>verb part>because>contraction part>ing>preposition part>manner>and part>manner>manner
          part>opener>and part>opener>preposition part>other>article part>other>because part>part>manner
          part>part>other part>preposition>article part>preposition>number part>verb>article part>verb>preposition
          preposition>and>other preposition>article>because preposition>article>ing preposition>article>manner
          preposition>article>other preposition>article>unit preposition>because>contraction
          preposition>because>other preposition>because>pronoun preposition>ing>preposition preposition>ing>pronoun
          preposition>number>because preposition>number>other preposition>opener>article preposition>opener>pronoun
          preposition>other>auxiliary preposition>other>pronoun preposition>preposition>because
          preposition>preposition>never preposition>preposition>number preposition>preposition>part
          preposition>preposition>pronoun preposition>pronoun>manner preposition>pronoun>opener pronoun>ing>pronoun
          pronoun>manner>other pronoun>opener>number pronoun>other>manner pronoun>other>number pronoun>other>other
          pronoun>preposition>and pronoun>verb>manner unit>manner>because unit>manner>other unit>number>unit
          unit>opener>verb unit>other>preposition unit>other>pronoun unit>preposition>opener verb>and>verb
          verb>article>opener verb>article>preposition verb>article>verb verb>ing>opener verb>ing>preposition
          verb>manner>and verb>manner>contraction verb>manner>number verb>manner>preposition verb>number>kit
          verb>other>auxiliary verb>other>contraction verb>other>number verb>other>preposition
          verb>preposition>because verb>pronoun>article verb>pronoun>because verb>pronoun>contraction
          verb>pronoun>manner verb>pronoun>opener verb>pronoun>preposition verb>pronoun>verb verb>unit>because
          verb>verb>article verb>verb>number
        `,
      ],
      [
        -0.5,
        `
          and>other>pronoun and>verb>article and>verb>other and>verb>part article>ing>other article>ing>preposition
          article>kit>auxiliary article>kit>because article>kit>preposition article>manner>verb
          article>opener>other article>opener>part article>opener>verb article>other>ing article>other>never
          article>part>auxiliary article>preposition>other article>unit>preposition auxiliary>ing>article
          auxiliary>other>preposition auxiliary>preposition>verb because>pronoun>other contraction>article>other
          contraction>number>and contraction>opener>pronoun end>opener>other ing>other>auxiliary
          ing>preposition>article kit>other>number manner>other>article manner>preposition>article
          manner>preposition>other number>and>number number>number>and number>other>and number>preposition>and
          number>preposition>other number>unit>preposition opener>number>pronoun opener>other>manner
          opener>other>number other>and>article other>and>contraction other>and>other other>and>verb
          other>article>kit other>article>other other>article>part other>auxiliary>other other>because>article
          other>because>contraction other>ing>other other>kit>preposition other>manner>verb
          other>number>preposition other>number>unit other>other>part other>part>preposition
          other>preposition>article other>pronoun>preposition other>unit>contraction other>unit>other
          other>verb>because other>verb>number other>verb>preposition part>and>verb part>other>preposition
          part>part>preposition part>preposition>preposition part>verb>other preposition>and>verb
          preposition>article>kit preposition>article>part preposition>article>verb preposition>ing>article
          preposition>manner>because preposition>number>part preposition>number>unit preposition>number>verb
          preposition>other>because preposition>part>other preposition>part>preposition
          preposition>preposition>article preposition>preposition>other preposition>verb>and
          preposition>verb>number preposition>verb>preposition pronoun>auxiliary>auxiliary pronoun>auxiliary>never
          pronoun>auxiliary>other pronoun>opener>and pronoun>other>article pronoun>preposition>manner
          pronoun>preposition>part pronoun>preposition>preposition pronoun>verb>and unit>opener>article
          unit>preposition>preposition verb>article>kit verb>article>other verb>article>part verb>manner>because
          verb>number>part verb>preposition>manner verb>preposition>opener verb>preposition>preposition
        `,
      ],
      [
        -0.75,
        `
          and>manner>verb article>manner>other article>other>kit because>pronoun>verb contraction>other>article
          number>other>verb opener>unit>pronoun
        `,
      ],
      [-1, 'part>other>contraction'],
    ],
    names: [
      [1.25, 'inside>first'],
      [0.5, 'first>first inside>no no>first'],
      [0.25, 'first>no'],
      [-0.25, 'no>no'],
      [-0.75, 'inside>inside'],
      [-1.25, 'first>inside'],
    ],
    since: [
      [-0.25, '2 3 4'],
      [-0.5, '11'],
      [-0.75, '1'],
    ],
    'since-class': [
      [0.75, '4>never 6>never 7>never'],
      [0.5, '1>and 2>and 2>verb 5>never 7>and 7>because'],
      [
        0.25,
        `
          1>number 1>opener 2>ly 3>and 3>contraction 3>verb 4>kit 4>manner 4>part 5>number 6>and 6>contraction
          6>verb 7>contraction 7>number
        `,
      ],
      [
        -0.25,
        `
          1>kit 2>pronoun 3>article 3>auxiliary 3>ing 3>kit 3>manner 4>ing 4>ly 4>opener 4>other 4>preposition
          4>pronoun 5>ly 5>manner 5>preposition 6>article 6>auxiliary 6>other 6>part 6>pronoun 7>other
        `,
      ],
      [
        -0.5,
        `
          1>article 1>auxiliary 1>because 1>ly 1>preposition 1>pronoun 2>auxiliary 2>because 2>ing 2>manner
          2>number 2>preposition 2>unit 3>because 3>opener 3>preposition 4>unit 5>opener 5>unit 6>ing 6>kit 7>ing
          7>opener 7>unit
        `,
      ],
      [-0.75, '1>ing 1>manner 1>other 1>unit 1>verb 7>kit'],
      [-1, '1>never 1>part'],
    ],
    first: [
      [1, 'never>contraction number>number'],
      [
        0.75,
        `
          because>kit because>verb manner>manner number>and opener>opener part>and part>part part>verb
          preposition>and pronoun>contraction verb>never
        `,
      ],
      [
        0.5,
        `
          article>because article>contraction contraction>because contraction>contraction contraction>ly ing>and
          kit>never kit>part kit>verb never>pronoun number>ing opener>because opener>other opener>preposition
          other>never part>never preposition>never preposition>preposition verb>verb
        `,
      ],
      [
        0.25,
        `
          and>and article>and article>ly article>pronoun auxiliary>number auxiliary>unit because>because
          because>opener because>part ing>kit ing>preposition kit>because ly>and ly>opener manner>and
          manner>because manner>contraction manner>kit never>kit number>verb opener>article opener>manner
          opener>unit other>contraction other>manner part>contraction part>kit part>number preposition>auxiliary
          unit>and
        `,
      ],
      [
        -0.25,
        `
          and>article and>pronoun article>never auxiliary>ing auxiliary>other because>and because>article
          because>other contraction>and contraction>kit contraction>number contraction>other contraction>verb
          ing>article ing>auxiliary ing>manner ing>other ing>verb kit>auxiliary kit>other ly>article manner>never
          manner>opener manner>other manner>preposition never>ing never>number never>other never>unit
          number>auxiliary number>manner number>preposition opener>and other>ly other>number other>pronoun
          part>article part>auxiliary part>manner preposition>kit preposition>manner preposition>other
          preposition>part pronoun>auxiliary pronoun>ly pronoun>preposition unit>because unit>contraction verb>and
          verb>ing verb>kit verb>manner verb>opener verb>pronoun verb>unit
        `,
      ],
      [
        -0.5,
        `
          and>auxiliary and>kit and>manner and>part and>preposition and>unit and>verb article>ing article>manner
          article>number article>opener article>other article>part article>preposition article>unit
          auxiliary>preposition auxiliary>pronoun because>contraction because>ly because>never because>number
          because>preposition because>pronoun contraction>preposition contraction>unit manner>auxiliary
          manner>number never>auxiliary never>part number>kit number>other number>pronoun number>unit opener>never
          other>part other>unit part>opener part>preposition preposition>ing preposition>opener preposition>pronoun
          pronoun>article pronoun>ing pronoun>kit pronoun>manner pronoun>opener pronoun>other pronoun>unit
          unit>pronoun verb>article verb>auxiliary verb>other verb>preposition
        `,
      ],
      [
        -0.75,
        `
          article>auxiliary article>kit article>verb because>ing contraction>ing contraction>manner kit>preposition
          manner>part never>preposition pronoun>number pronoun>part unit>number verb>ly verb>number
        `,
      ],
      [-1, 'preposition>contraction pronoun>verb verb>because'],
    ],
    'first-word': [
      [1.25, 'right'],
      [1, 'um'],
      [0.75, 'actually alright big collars good in nine no okay please reds side to uh well'],
      [
        0.5,
        `
          any band bars before brace brisk build carol curl denise extend flat forearms hamstring hi high hinge
          hiya jab jean knuckles kyle loose mats nose oh on overhead pause ready rise rock run safety same sixteen
          small sore squash squats standing steady straighten thank up want while
        `,
      ],
      [
        0.25,
        `
          12 30 40 84 again against ankle anybody anyone anyway ask away awful bar bar's bear bending bicep
          bicycles blues body bow bridges building burn by calves chalk's climbers coats confident couple cross
          derek drops ear eight elbow enjoy evening every exercise eyes face faster float foot four fourth front
          frozen full gloves grab halos hands haven't hay heals heart heels hello here hey hips hollow ignore
          inhale inside instead jacks kneel lats lighter long looking lovely march marged military mo morning necks
          nice one operated outside palm plates prod propped quiet ratio remember ribs righto send sets seven shoes
          shoulders sip skaters slam slowly sniff soak sock soles sorry splits sprinkler staying stroll swing ten's
          thigh thirteen thirty tin's tingling tins two wall water what's whoever wide wraps wrists yes
        `,
      ],
      [
        -0.25,
        `
          2 35 5 a about aim almost ankles another arm around avoid balance barre be belly's bent both bottom
          breath breathing bum bye can carioca chin choose clock's crease crown cushion cut dead depends did don't
          double down eagle easiest either everybody everyone's everything exhale finish flip from funny get glute
          got halo hand hang he'd he's heal hiss hook hop house inner internal it'll joyce jump keep l lap later
          lead load lower's mini minute's moose most moving muscle ninety nobody not nothing notice onto open out
          pant partly peel pinch planks pop pretend prop proper punch push quicker quit rear resist ring ron's
          rotate saturday shake she shift shins shuffle sigh six smaller snap somebody'll start statues step stick
          still straightening surface sweep takes that that'll that's then there's thread tidy till time toes too
          tops trace trembling's tuck turn unlock warm we're whose wider work wring years you'll
        `,
      ],
      [
        -0.5,
        `
          add after and as bird blow but check do except fast feel find fists five flatten forehead grip grow he
          heavier hike hover i i'd i'll i'm is let's little loop lower maybe move next nobody's now park press put
          rest roll running scoot screw seated shaky's she's shorten single skin some somebody sort stack stay stop
          strap sure swap take tattie tell thanks the there these they they've thighs this tilt try tummy use we
          we'd we've welcome when where who y'all you
        `,
      ],
      [
        -0.75,
        `
          an drink er go hip i've imagine it leave like make mine never only people pick rack set squeeze though
          whatever with zip
        `,
      ],
      [-1, 'because give let my other'],
    ],
    before2: [
      [1, 'little'],
      [
        0.75,
        `
          20 30 bad behind big collars each full haven't leaning mean ring rugby small station third too
        `,
      ],
      [
        0.5,
        `
          1 after already answer barbell bending bicep boots calf cleans climbing cones days dead drifting dull
          eighty fast first five force from hanging hat hate hi his isn't it'll lateral lowest main match mats
          months nearly neck's o'clock opened piece pockets pressure rocked roll said say second seven short
          smaller sock soft thank these today travelling was water we
        `,
      ],
      [
        0.25,
        `
          18 2 24 5 6 90 ache actually all an any are backside bag banging barbecue bars begin bike blue boat both
          bottle breastbone breathe building butt's buttock calf's cardigan carpet carry chain cheat chin chipper
          circuit clams clean comfy coming confident cooked cried crisp cross dad desk dip disc doing draw drink
          drives during elbow's empty exercise faster feeling feels finish finisher fold forget form forwards
          fridge fun funny gather gives gloves goal good grabs great hamstring hangers heart her hinge hollow
          hopeless hot idea ignore imaginary impact inwards jacks jerking jog jumps keeps kettle kettlebell kicks
          kilos knee's kneel knock landing last lats lean leaves lengths lighter lights lose lost lovely mate meet
          mouth nearer necks needles new nine nips number oak of opposite option order overhead own pair palm pins
          point pressed priya proud puff pump quick quiet rack reach recording rep rise rolling rotator row's
          running rush russian same sand save see set's shade shoulder's shouldn't sinking slam softly soles spot
          spread spring squat star step stick stiff straight swings tea teaches teeth terrible that'll thirty three
          times tracks trainers tss tummy twice uh underneath walk warm way week weights were wheels wobbles won't
          would years yourselves
        `,
      ],
      [
        -0.25,
        `
          10 100 12 45 7 a ahead air always and ankles anyone back bar be because bed bell bins bit board bone box
          bum but button by called can't catch child's clock's close could count crate crawl cushion day did does
          dogs door drive drop dumb dumbbells ears eight elbows eleven er even ever everybody everybody's
          everyone's fall fancy far fingertips flexor forward getting goblet grip's half hall halo hard harder he's
          head heal heels here's hill hills hip's hope into is kick knees lamp leave legs let's line lives looking
          looks lots mat minds mine moment month more need never nice nineteen nobody's off old on open out outside
          over pelvic people pick planks pli proper push rail raises really reps romanian room saw scoot seated set
          she shoe shopping shouting side sideways sit sixty sleep slide so some space standing started starts
          steady still stop stopped stretch strides stroller struggling swap tail talk tattie than that's then
          there thing till tomorrow tonight towards tray tuck until up ups us use view waist wake welcome weren't
          with without wrists written yes you'd you've
        `,
      ],
      [
        -0.5,
        `
          25 8 aren't arms asked away been bring call can chair dives do don't done down ease fingers flat floor
          give goes had hands has have hips how i i'll if instead just kitchen knee like lot lower mailbox me
          minute minutes most ninety okay one only onto operated pain please put rest rings row sets shin should
          sides slow somebody someone sort take tall tell there's think thousand through told top twist we'll
          week's what when where while whoever's will
        `,
      ],
      [-0.75, "about again as before between he here i've let make stay um"],
    ],
    'word-class': [
      [1.25, 'on>number'],
      [1, 'down>article it>verb out>article out>part so>other these>other up>verb'],
      [
        0.75,
        `
          10>preposition 2>number away>verb back>article breathe>contraction done>verb down>other down>verb
          flat>other go>opener hips>part in>verb is>verb it>contraction it>pronoun land>other leg>number no>number
          off>number okay>other on>verb one>article out>number plank>part right>number right>other second>article
          tall>other that>verb thing>preposition today>other up>number up>other
        `,
      ],
      [
        0.5,
        `
          ache>preposition again>number arms>part arms>verb back>number back>verb belly>and bent>other bit>because
          bottom>preposition breathing>pronoun breaths>preposition chin>part did>preposition down>contraction
          down>part easy>verb eight>and even>other fine>other first>and first>part five>article five>verb
          floor>other foot>article forward>part four>and good>contraction heavy>verb height>other high>preposition
          hips>manner home>article it>kit it>never knee>verb kneecap>other know>preposition lad>other left>other
          leg>pronoun like>number mat>contraction middle>contraction minute>verb morning>other nice>other
          no>contraction no>other no>pronoun now>pronoun off>other off>verb okay>preposition on>contraction one>ing
          one>manner one>preposition over>other pause>and please>pronoun remember>and right>unit rings>because
          round>and round>opener shoulder>preposition shoulders>part side>number side>preposition side>verb
          sides>verb six>auxiliary skips>number spot>preposition squats>number stand>because stop>article
          straight>verb ten>preposition them>and then>other then>preposition there>other three>because three>opener
          through>other today>because top>other two>part up>opener up>part way>because week>and you>part
        `,
      ],
      [
        0.25,
        `
          4>number 4>other again>and again>opener again>other again>preposition apart>preposition are>number
          are>verb arm>other arm>verb arms>ly arms>number away>manner back>because back>manner back>never back>part
          back>pronoun backs>other balance>auxiliary belly>preposition belly>verb bench>preposition bent>part
          board>preposition bottom>other breath>other breath>verb breathe>never breather>and breathing>manner
          breaths>and can>manner ceiling>part chair>number chair>other chair>part chest>because chest>verb
          close>preposition coming>contraction cross>number curls>preposition did>article do>verb down>never
          drink>verb dumbbells>preposition each>article each>verb ear>preposition edge>part eight>never
          eight>number eight>other eighteen>number eyes>other feet>part fifteen>and fingers>preposition
          finish>article first>preposition five>manner five>number flat>part floor>manner floor>pronoun foot>verb
          forty>other forward>preposition four>number four>opener fours>verb front>and front>contraction go>article
          go>part good>other grip>article ground>verb hamstring>other hand>other hand>part hands>other head>opener
          heel>part height>part hello>article here>contraction high>other hip>other hip>preposition hips>number
          hold>verb home>and in>and in>manner in>part in>pronoun is>pronoun it>part knees>and know>article
          left>article left>verb leg>and legs>and legs>number lift>article lift>preposition like>pronoun line>part
          long>and lot>preposition lovely>verb low>and lower>and lower>preposition mat>other mat>preposition
          middle>verb mind>article more>number more>other more>part more>verb morning>pronoun nice>opener nine>and
          nine>contraction now>because off>contraction off>never on>part on>preposition on>pronoun once>preposition
          one>contraction ones>other other>and out>other out>pronoun out>verb over>pronoun over>verb own>part
          pair>and pair>number press>manner pull>verb rail>preposition raises>number raises>preposition reach>other
          ready>other rest>auxiliary rest>manner right>opener right>verb rows>other rows>verb seat>verb
          seconds>number set>because sets>manner seven>and seven>number shoulders>and shoulders>other
          shoulders>preposition side>ing side>manner side>other sit>article sitting>preposition six>other
          slow>because slow>preposition slowly>part so>and sore>verb squat>other squats>article squats>verb
          stand>article stand>pronoun standing>manner step>because step>verb steps>preposition stop>preposition
          stop>pronoun swinging>contraction ten>and ten>article ten>number that>and that>contraction that>manner
          that>number then>part there>number these>and thigh>preposition thighs>and thighs>preposition this>opener
          this>pronoun those>preposition three>and three>verb time>article time>auxiliary time>preposition
          times>and today>verb toe>because toe>never toe>part toes>manner together>verb top>and top>contraction
          towel>and turn>preposition twice>and two>and um>article um>preposition up>article up>never ups>and
          waist>verb walk>other wall>and wall>part water>opener way>other way>part way>verb week>opener
          week>preposition weight>and weight>auxiliary were>ing wide>other wide>verb width>verb work>number
          yes>contraction yet>verb
        `,
      ],
      [
        -0.25,
        `
          2>and 30>preposition 4>and 8>other a>opener a>part a>unit after>article again>article all>number
          always>article an>other and>article and>auxiliary and>because and>manner and>part anybody>other are>ing
          are>other arms>and arms>other as>article as>contraction as>manner as>other as>pronoun at>article
          away>preposition back>opener back>unit balance>article bar>preposition bar>verb be>other behind>pronoun
          bell>verb belly>other bend>because big>other blood>other both>part box>other breaths>manner bring>article
          bus>verb by>article call>pronoun called>article can't>verb can>other chair>verb chest>number
          come>preposition comes>preposition coming>preposition cross>other curls>part cushion>preposition
          dead>manner dead>other do>article do>number do>pronoun doesn't>verb doing>article don't>auxiliary
          don't>other done>opener done>other done>pronoun down>kit down>manner each>other each>part ears>other
          eight>preposition elbows>article elbows>verb even>because far>other feels>other fifty>number
          first>because first>number five>because five>other five>unit flat>and flat>preposition flat>verb
          floor>article floor>because floor>verb foot>other forward>and four>because four>other from>article
          front>number front>other front>part front>verb get>article get>other go>because goes>article goes>other
          going>preposition good>and good>pronoun grab>article half>other hand>preposition hands>preposition
          have>article head>and heavy>part heel>because heel>other heel>preposition hello>opener hi>other
          hips>because hips>never hold>article hold>preposition hold>pronoun hollow>verb how>manner how>other
          i've>other i>auxiliary i>never if>article if>other inch>preposition inch>verb inner>part into>article
          is>article is>manner is>number it's>article it's>manner it's>never it's>number it's>other it>manner
          it>preposition just>article just>preposition keep>article knee>other knees>manner knees>number
          know>contraction lane>number leave>article left>number left>part leg>auxiliary leg>opener leg>preposition
          legs>manner legs>preposition let>article let>opener let>pronoun level>number lifts>number like>article
          line>verb little>verb look>preposition lost>verb lot>opener low>other lower>part lunges>opener
          makes>pronoun mat>article me>number me>preposition metres>and metres>number minute>and minute>preposition
          minutes>because minutes>opener minutes>preposition next>kit next>preposition next>verb ninety>number
          no>kit not>article not>ing not>preposition now>article now>contraction now>part now>verb of>pronoun
          off>because off>pronoun on>article once>contraction one's>article one>opener one>verb ones>article
          only>verb operated>part other>verb over>article people>other percent>preposition phone>other piece>number
          press>and pretend>contraction pull>article put>article quick>and quiet>part raises>verb rings>manner
          rings>preposition rounds>and rounds>preposition row>verb same>kit same>other same>verb say>contraction
          seat>preposition second>opener second>other second>part second>unit second>verb seconds>preposition
          see>article see>contraction see>pronoun short>other shoulder>contraction shoulder>other shoulder>verb
          side>auxiliary sit>contraction skip>article slowly>other so>contraction so>number so>verb
          somebody's>other sore>part squat>and squats>and squats>opener stand>manner stand>preposition
          station>number stay>verb stays>manner stick>article stop>and straight>and straight>because
          stretch>because support>verb swing>preposition take>article tall>manner tea>other tell>pronoun
          ten>because ten>manner ten>other that's>article that's>number that>auxiliary that>part the>ing the>number
          the>preposition them>article them>manner then>number then>pronoun then>verb there's>article there>and
          there>preposition thigh>and thigh>verb thighs>verb third>other those>contraction three>preposition
          three>unit through>article tight>other till>contraction time>because time>number time>unit time>verb
          times>article times>number times>verb to>article to>auxiliary to>opener today>and today>pronoun
          toes>other together>preposition told>pronoun too>manner too>other top>pronoun twelve>other
          twenty>preposition twice>article two>auxiliary two>unit under>article walk>preposition wall>preposition
          wall>verb was>number water>because water>other way>pronoun we>auxiliary we>opener weeks>and
          weight>preposition well>opener when>contraction when>pronoun whenever>contraction where>contraction
          where>pronoun wherever>pronoun while>pronoun who>other whole>part width>and with>number with>part
          you're>ing you're>other you've>other you>opener you>preposition you>pronoun your>number your>opener
          your>preposition yourself>preposition
        `,
      ],
      [
        -0.5,
        `
          a>kit a>manner a>number a>other a>verb about>number again>verb all>article all>other and>and
          and>contraction and>never and>number and>opener and>other and>preposition and>pronoun arms>preposition
          at>number at>other at>part away>part back>preposition bar>and before>pronoun behind>verb bent>verb
          big>part box>and breath>and breath>preposition breathe>preposition breaths>article can>verb day>because
          don't>verb down>and down>because down>preposition eighty>number elbows>and feet>other feet>preposition
          first>unit five>contraction foot>and for>article for>other go>manner good>opener got>article got>number
          got>other half>article hang>preposition head>because heavy>number hip>contraction hips>preposition
          hips>verb hundred>and i>other i>verb if>contraction if>pronoun in>article just>other know>part leg>verb
          legs>verb lift>number little>other lunges>and middle>part nice>and no>ing number>number of>article
          of>other one>part opposite>part other>number out>because out>manner out>preposition people>verb
          plank>verb rest>article right>and round>article say>number says>number second>number set>article
          sets>preposition shoulder>and shoulder>part side>because side>contraction sit>verb squats>preposition
          straight>preposition take>number thank>pronoun the>kit the>opener the>other the>part them>preposition
          thirty>number time>pronoun to>other to>part today>auxiliary top>part two>number wall>because wall>other
          we>verb what>pronoun while>contraction with>article with>other you>auxiliary your>other your>part
        `,
      ],
      [
        -0.75,
        `
          and>verb done>article for>number forty>number go>preposition just>verb knee>contraction last>number
          last>other of>number right>part round>number shoulders>verb the>verb to>number twenty>number
          way>preposition week>number you>verb
        `,
      ],
      [-1, 'bottom>part like>contraction what>contraction'],
      [-1.25, 'to>verb'],
    ],
    classes: [
      [1, 'part>part verb>verb'],
      [
        0.75,
        `
          article>and auxiliary>and auxiliary>contraction ing>verb kit>part manner>number number>contraction
          number>number opener>contraction part>number pronoun>part verb>and
        `,
      ],
      [
        0.5,
        `
          article>article article>contraction article>pronoun because>opener ing>manner ing>part kit>article
          kit>number manner>article manner>never number>article number>because number>opener number>pronoun
          number>verb opener>article opener>part opener>verb other>contraction other>never part>article
          part>pronoun preposition>kit preposition>never preposition>verb pronoun>article unit>kit unit>number
          unit>pronoun unit>verb
        `,
      ],
      [
        0.25,
        `
          article>never because>kit contraction>and contraction>contraction ing>kit kit>contraction kit>never
          kit>pronoun ly>contraction ly>ing ly>number ly>verb never>contraction never>pronoun number>and number>ing
          number>never opener>other opener>pronoun other>article other>ly other>manner other>number other>verb
          part>never preposition>and preposition>contraction pronoun>and pronoun>contraction pronoun>kit
          pronoun>pronoun unit>other verb>never
        `,
      ],
      [
        -0.25,
        `
          and>and and>article and>kit and>part article>auxiliary article>number article>preposition
          auxiliary>auxiliary auxiliary>kit auxiliary>manner auxiliary>opener auxiliary>part auxiliary>pronoun
          because>auxiliary because>never because>preposition contraction>ly contraction>manner
          contraction>preposition ing>article ing>ing ing>other ing>unit kit>auxiliary kit>because kit>ing
          ly>article manner>kit manner>manner manner>other never>article never>auxiliary never>ing never>other
          never>preposition number>other opener>preposition opener>unit other>auxiliary other>ing other>preposition
          other>unit part>manner part>opener part>other preposition>ly preposition>manner preposition>number
          preposition>preposition preposition>pronoun pronoun>ly pronoun>manner pronoun>other pronoun>verb
          unit>manner verb>article verb>auxiliary verb>because verb>manner verb>number verb>other verb>pronoun
        `,
      ],
      [
        -0.5,
        `
          and>auxiliary and>manner and>never and>opener and>other and>pronoun article>ing article>kit
          article>manner article>opener article>other article>part article>unit article>verb auxiliary>article
          auxiliary>ing auxiliary>number auxiliary>other auxiliary>preposition auxiliary>verb because>article
          because>manner because>number because>pronoun because>verb contraction>article contraction>auxiliary
          contraction>because contraction>ing contraction>never contraction>number contraction>other
          contraction>verb ing>preposition ing>pronoun kit>preposition manner>preposition never>verb number>part
          number>unit opener>number part>auxiliary part>ing part>preposition preposition>article preposition>ing
          pronoun>auxiliary pronoun>preposition unit>because unit>preposition verb>preposition
        `,
      ],
      [
        -0.75,
        `
          and>contraction and>number and>verb auxiliary>never because>contraction contraction>opener
        `,
      ],
    ],
    across: [
      [1, 'part>verb>article verb>verb>verb'],
      [
        0.75,
        `
          ing>and>verb kit>part>preposition kit>verb>article number>and>preposition number>other>other
          opener>part>other opener>verb>preposition other>opener>manner other>other>other other>part>other
          other>part>preposition other>pronoun>auxiliary part>auxiliary>pronoun part>part>manner part>part>part
          preposition>and>and preposition>and>contraction preposition>part>preposition unit>number>unit
          verb>and>preposition verb>number>other
        `,
      ],
      [
        0.5,
        `
          and>because>contraction article>and>contraction article>article>part auxiliary>manner>and
          auxiliary>number>number auxiliary>pronoun>auxiliary because>other>preposition contraction>other>auxiliary
          ing>article>manner ing>other>ing ing>part>preposition ing>pronoun>auxiliary ing>verb>pronoun
          kit>and>pronoun kit>article>part kit>other>contraction kit>other>part kit>preposition>part
          kit>verb>pronoun manner>contraction>manner manner>manner>number manner>other>preposition
          manner>other>pronoun manner>part>other manner>part>preposition manner>preposition>preposition
          manner>pronoun>other never>other>opener number>and>manner number>article>number
          number>contraction>preposition number>number>and number>number>number number>other>manner
          number>pronoun>other opener>and>article opener>and>pronoun opener>and>verb opener>article>auxiliary
          opener>article>unit opener>contraction>other opener>manner>preposition opener>preposition>other
          opener>unit>number opener>verb>other other>article>ing other>article>manner other>article>number
          other>auxiliary>pronoun other>because>because other>contraction>manner other>kit>article other>kit>other
          other>manner>part other>manner>pronoun other>number>other other>number>preposition other>number>unit
          other>opener>other other>opener>part other>other>pronoun other>pronoun>never other>pronoun>other
          other>verb>article part>and>auxiliary part>and>number part>contraction>never part>never>article
          part>number>article part>number>part part>other>part part>part>preposition part>preposition>contraction
          part>pronoun>never preposition>and>article preposition>and>because preposition>because>other
          preposition>contraction>never preposition>kit>preposition preposition>never>verb
          preposition>other>preposition preposition>preposition>and preposition>preposition>preposition
          preposition>pronoun>never preposition>unit>preposition pronoun>article>other pronoun>because>pronoun
          pronoun>other>and pronoun>other>opener unit>and>number unit>article>unit unit>other>number
          unit>preposition>pronoun unit>unit>preposition unit>verb>preposition verb>article>auxiliary
          verb>article>opener verb>contraction>number verb>contraction>other verb>number>manner verb>other>article
          verb>other>auxiliary verb>other>pronoun verb>part>preposition verb>part>verb verb>pronoun>auxiliary
        `,
      ],
      [
        0.25,
        `
          and>other>number and>preposition>article article>contraction>article article>ly>other
          article>manner>article article>number>unit article>opener>pronoun article>preposition>article
          article>pronoun>auxiliary article>pronoun>other auxiliary>auxiliary>pronoun auxiliary>number>manner
          because>other>and because>verb>preposition contraction>other>contraction ing>and>contraction
          ing>and>pronoun ing>article>number ing>manner>other ing>manner>preposition ing>never>verb ing>opener>verb
          ing>other>article ing>part>auxiliary ing>verb>preposition kit>and>because kit>and>manner kit>article>kit
          kit>contraction>number kit>kit>preposition kit>manner>article kit>never>verb kit>number>other
          kit>part>article kit>pronoun>auxiliary kit>verb>because manner>and>and manner>and>pronoun
          manner>article>ing manner>article>other manner>because>because manner>contraction>article
          manner>never>verb manner>number>and manner>number>other manner>number>part manner>number>preposition
          manner>other>part manner>part>article manner>preposition>manner manner>preposition>other
          manner>verb>other number>and>and number>and>opener number>article>verb number>auxiliary>article
          number>because>manner number>because>other number>contraction>other number>ing>other number>manner>part
          number>number>opener number>number>verb number>opener>article number>opener>verb number>part>auxiliary
          number>part>number number>preposition>because number>preposition>manner number>preposition>number
          number>preposition>preposition opener>article>other opener>article>part opener>auxiliary>article
          opener>because>auxiliary opener>because>pronoun opener>ing>other opener>number>article opener>opener>and
          opener>opener>number opener>opener>pronoun opener>opener>unit opener>other>and opener>other>article
          opener>other>contraction opener>other>other opener>other>preposition opener>other>verb opener>part>unit
          opener>preposition>preposition opener>pronoun>other opener>verb>article other>and>and other>and>part
          other>and>preposition other>and>verb other>article>opener other>article>verb other>auxiliary>article
          other>because>opener other>because>verb other>contraction>article other>contraction>never other>ing>other
          other>kit>preposition other>manner>ing other>manner>manner other>manner>unit other>never>article
          other>never>other other>number>manner other>opener>contraction other>opener>opener other>other>article
          other>other>ing other>part>ing other>part>manner other>pronoun>kit other>unit>article other>verb>and
          other>verb>preposition other>verb>pronoun part>and>because part>and>contraction part>and>never
          part>article>other part>article>part part>because>other part>contraction>article part>contraction>ing
          part>contraction>manner part>contraction>verb part>ing>article part>kit>other part>manner>other
          part>manner>part part>other>pronoun part>other>unit part>part>and part>preposition>ing part>verb>and
          part>verb>number preposition>and>opener preposition>and>pronoun preposition>article>auxiliary
          preposition>auxiliary>article preposition>auxiliary>number preposition>contraction>article
          preposition>contraction>other preposition>kit>article preposition>manner>article preposition>never>other
          preposition>never>preposition preposition>number>preposition preposition>opener>opener
          preposition>opener>preposition preposition>other>article preposition>other>ing preposition>part>because
          preposition>part>manner preposition>part>opener preposition>preposition>because
          preposition>preposition>ing preposition>pronoun>other preposition>unit>other preposition>verb>kit
          preposition>verb>number preposition>verb>other preposition>verb>verb pronoun>auxiliary>article
          pronoun>contraction>auxiliary pronoun>contraction>never pronoun>ing>pronoun pronoun>kit>preposition
          pronoun>manner>verb pronoun>number>unit pronoun>opener>and pronoun>other>manner pronoun>pronoun>verb
          unit>and>contraction unit>and>other unit>and>preposition unit>article>other unit>because>article
          unit>contraction>article unit>manner>and unit>manner>article unit>number>other unit>opener>verb
          unit>other>unit unit>part>other unit>part>preposition unit>pronoun>verb verb>and>number
          verb>contraction>never verb>ing>because verb>ing>other verb>manner>because verb>never>verb
          verb>opener>and verb>opener>article verb>pronoun>verb verb>verb>article
        `,
      ],
      [
        -0.25,
        `
          and>article>other and>auxiliary>article and>contraction>article and>contraction>other and>number>other
          and>number>preposition and>number>unit and>other>other and>pronoun>auxiliary and>verb>other
          article>ing>other article>ing>preposition article>kit>and article>kit>article article>kit>verb
          article>manner>other article>number>preposition article>opener>article article>other>and
          article>other>auxiliary article>other>because article>other>contraction article>other>ing
          article>other>kit article>other>never article>other>number article>other>preposition article>other>unit
          article>other>verb article>part>and article>part>article article>part>auxiliary article>part>because
          article>part>ing article>part>number article>part>opener article>preposition>preposition
          article>verb>verb auxiliary>article>other auxiliary>auxiliary>article auxiliary>ing>preposition
          auxiliary>never>other auxiliary>never>verb auxiliary>number>other auxiliary>number>unit
          auxiliary>other>other auxiliary>other>preposition auxiliary>other>verb auxiliary>preposition>article
          because>article>auxiliary because>article>other because>article>part because>contraction>article
          because>contraction>manner because>contraction>never because>contraction>preposition
          because>other>article because>pronoun>other because>pronoun>verb because>verb>article
          contraction>because>contraction contraction>number>unit contraction>other>article
          contraction>other>preposition contraction>other>pronoun contraction>verb>preposition
          ing>article>auxiliary ing>article>other ing>because>article ing>opener>other ing>other>contraction
          ing>part>other ing>preposition>pronoun ing>preposition>verb ing>verb>article ing>verb>verb kit>and>number
          kit>article>auxiliary kit>article>ing kit>auxiliary>article kit>manner>because kit>opener>other
          kit>other>and kit>other>auxiliary kit>other>other kit>preposition>contraction kit>verb>preposition
          manner>because>article manner>because>verb manner>contraction>number manner>contraction>verb
          manner>manner>article manner>manner>manner manner>manner>other manner>manner>part manner>number>unit
          manner>opener>opener manner>opener>pronoun manner>part>number manner>preposition>number
          manner>preposition>pronoun manner>pronoun>auxiliary manner>unit>preposition never>article>other
          never>other>other never>other>preposition never>verb>other number>and>contraction number>and>number
          number>article>other number>article>part number>auxiliary>other number>contraction>auxiliary
          number>manner>unit number>number>auxiliary number>number>part number>other>because number>other>opener
          number>other>unit number>preposition>article number>preposition>other number>unit>and number>unit>article
          number>unit>other number>unit>verb number>verb>article opener>and>manner opener>and>never
          opener>and>opener opener>because>article opener>contraction>article opener>contraction>verb
          opener>number>other opener>opener>part opener>other>never opener>other>pronoun opener>part>preposition
          opener>preposition>and opener>preposition>article opener>preposition>number opener>verb>pronoun
          other>and>auxiliary other>and>manner other>and>opener other>article>part other>auxiliary>auxiliary
          other>because>article other>because>auxiliary other>because>number other>ing>because other>ing>pronoun
          other>kit>and other>kit>auxiliary other>kit>contraction other>manner>contraction other>number>and
          other>number>opener other>opener>article other>opener>because other>opener>preposition
          other>other>auxiliary other>other>because other>other>contraction other>other>manner other>other>never
          other>other>part other>other>verb other>part>article other>part>auxiliary other>part>because
          other>part>contraction other>part>number other>part>opener other>part>pronoun other>preposition>and
          other>preposition>ing other>pronoun>article other>pronoun>because other>pronoun>manner
          other>pronoun>number other>pronoun>preposition other>unit>opener other>verb>auxiliary other>verb>because
          other>verb>contraction other>verb>ing other>verb>number part>and>manner part>auxiliary>ing
          part>auxiliary>other part>because>pronoun part>contraction>pronoun part>never>preposition part>never>verb
          part>opener>manner part>other>auxiliary part>other>contraction part>other>manner part>preposition>number
          part>preposition>other part>preposition>preposition part>verb>opener part>verb>preposition part>verb>verb
          preposition>and>unit preposition>article>kit preposition>article>manner preposition>article>opener
          preposition>auxiliary>other preposition>because>contraction preposition>because>pronoun
          preposition>contraction>opener preposition>contraction>verb preposition>ing>other
          preposition>ing>preposition preposition>manner>number preposition>manner>other preposition>number>manner
          preposition>number>part preposition>opener>and preposition>opener>manner preposition>opener>number
          preposition>other>because preposition>other>never preposition>other>pronoun
          preposition>preposition>manner preposition>preposition>number preposition>preposition>other
          preposition>pronoun>and preposition>pronoun>contraction preposition>pronoun>opener
          preposition>verb>contraction pronoun>auxiliary>auxiliary pronoun>auxiliary>other
          pronoun>auxiliary>preposition pronoun>auxiliary>pronoun pronoun>auxiliary>verb
          pronoun>because>contraction pronoun>because>other pronoun>contraction>ing pronoun>manner>and
          pronoun>other>article pronoun>other>number pronoun>other>preposition pronoun>preposition>other
          pronoun>preposition>preposition pronoun>preposition>pronoun pronoun>verb>ing pronoun>verb>number
          pronoun>verb>other unit>article>opener unit>article>preposition unit>because>contraction
          unit>manner>because unit>never>verb unit>number>and unit>number>contraction unit>opener>article
          unit>opener>other unit>other>article unit>other>manner unit>preposition>because unit>preposition>other
          unit>preposition>preposition unit>preposition>verb verb>and>contraction verb>and>kit verb>article>ing
          verb>article>kit verb>article>verb verb>contraction>preposition verb>manner>preposition verb>manner>verb
          verb>opener>preposition verb>other>and verb>other>because verb>other>preposition verb>preposition>and
          verb>preposition>part verb>preposition>pronoun verb>preposition>verb
        `,
      ],
      [
        -0.5,
        `
          and>pronoun>other and>verb>article and>verb>preposition and>verb>pronoun article>kit>other
          article>kit>preposition article>other>opener article>other>other article>other>part article>other>pronoun
          article>part>manner article>part>other article>part>part article>part>preposition article>part>verb
          auxiliary>manner>other auxiliary>verb>article because>contraction>other because>other>pronoun
          because>pronoun>auxiliary contraction>article>other contraction>other>other ing>and>other
          ing>article>part ing>manner>article ing>preposition>other kit>and>article kit>and>verb
          kit>other>preposition kit>preposition>other manner>and>manner manner>part>verb manner>preposition>article
          never>verb>preposition number>and>article number>and>pronoun number>because>pronoun number>number>other
          number>number>preposition number>other>preposition number>part>preposition number>unit>preposition
          opener>and>other other>and>number other>auxiliary>number other>auxiliary>other
          other>auxiliary>preposition other>because>other other>contraction>ing other>manner>verb other>never>verb
          other>number>number other>number>pronoun other>opener>never other>opener>pronoun other>opener>verb
          other>part>verb other>preposition>article other>preposition>verb other>verb>verb part>and>and
          part>article>unit part>contraction>auxiliary part>manner>verb part>other>and part>preposition>article
          part>preposition>part part>preposition>verb part>verb>because preposition>and>number preposition>and>part
          preposition>and>verb preposition>article>other preposition>article>part preposition>article>preposition
          preposition>contraction>ing preposition>manner>and preposition>other>and preposition>other>opener
          preposition>part>part preposition>part>verb preposition>preposition>article pronoun>other>other
          unit>and>because unit>because>pronoun unit>manner>preposition unit>other>contraction unit>verb>pronoun
          verb>and>verb verb>article>part verb>contraction>article verb>number>part verb>number>unit
          verb>preposition>article verb>preposition>number verb>preposition>other verb>pronoun>preposition
        `,
      ],
      [
        -0.75,
        `
          kit>and>preposition manner>other>verb part>contraction>other part>other>verb preposition>and>preposition
          unit>and>pronoun
        `,
      ],
      [-1, 'manner>and>other part>and>part'],
    ],
    other: [
      [0.5, 'may-open'],
      [0.25, 'opens'],
      [-0.25, 'may-open-bound'],
      [-0.5, 'goes-on'],
      [-1, 'line'],
    ],
    after: [
      [1.5, 'same'],
      [1.25, "both er no nobody's then whatever yes"],
      [
        1,
        `
          ease forehead jean leave like marcus near nearly opposite other please sorry um which
        `,
      ],
      [
        0.75,
        `
          10 12 because bring brisk carol ear elbows eleven except hang have haven't honestly i've ignore just keep
          lovely malcolm mine's park quit remember ron shake she small so some spikes stack straightening strict
          thank that's they're they've twice uh walk whether
        `,
      ],
      [
        0.5,
        `
          11 24 25 3 40 5 8 achilles always arms ask before big blow blues but bye carry cheerio da denise do don't
          drive drops ears even everybody everyone's farmer's final fingertips five's forget funny goblet grow
          hamstring handbags he he's heels hi hiding hike hiss i i'll it'll kyle lean lie little look mark maureen
          maybe mo nice nobody nose not otherwise palms priya quad ride ring romanian sat second settle shorten
          shut single sort sticks stop straps ta tap tell thanks there's they though thumbs tiny tss wait welcome
          without
        `,
      ],
      [
        0.25,
        `
          15 20 26 30 34 about all almost anything backs bags balancing bear bending bird bleeding bottoms
          breathing bridges burn by calf carefully carioca chairs chalk change chins coach cold core could creep
          cross crown cut derek didn't dips doorway double drag drills drink easy ends everybody's feat feet figure
          find flex fold frog frozen gareth gather gloves good grand halve heal heaviest heel help hmm hollow i'm
          joyce jump knees knuckles lads land lateral lead let's love lying march marged medium mind mine mostly
          mountain ninety nothing odds oh order pad palm parallel partner phones prop push pushups quick quickly
          rack ratio rear reverse rings rope rows russian send seven shins shove sing sit sitting sixes size slow
          snap sock socks somebody split spread sprinkler sprint step stick strides suitcase support sweet swings
          switch take taking tidy tighten tins tops tram triceps tuck umbrella well widen wiggle wipe write y'all
          yeah
        `,
      ],
      [
        -0.25,
        `
          18 90 ache across air along angle anybody anyone around asked away beat beginners bell belly better blade
          blood bone bones bottom box breaths button called cardigans cat catch couple crease day deadlift
          deadlifts deep dog early effort eight eighty else end face facing fast feels fists five fives flat follow
          forearms four frame grip half halo handed handle harder has hate hay high higher hinge holds hurts i'd in
          inhale its job jog kick kneel know later leaning leaves left leg's lifts lunges many mats means metres
          mini minutes morning move much need one's out pain pair past peel per place planks pressure pull quads
          raises reach ready real round row run sand saw say says seat should shoulder sides silly skip slam slide
          slides slower something sore spot sprints starts straight strong swap tailbone tall taller team ten the
          their these thigh things think those thursday tight times tip tray tucked turn turned two up want warm
          weeks weight weights what whenever why width will won't work would wrist you you'll you've
        `,
      ],
      [
        -0.5,
        `
          60 a ahead and apart are arm be behind bench between bit breath chair close comes coming doing enough far
          feel fifty finish floor for forward from get going got had hand heavy height home how hundred into it
          lets level line lot low lower makes neck nine on one over point pop press raise rounds seconds set sets
          side since squat start stay stays steps stretch stuff than that them thing this through time together
          tonight tuesday twist under ups wall was way we we'll week when who who's yet you'd your yourself
        `,
      ],
      [
        -0.75,
        `
          as at blades done each first foot goes here instead is knee leg more next of ones open people position
          there till to today toe too while
        `,
      ],
      [-1, 'again now were'],
    ],
    'class-word': [
      [1.25, 'preposition>up'],
      [
        1,
        `
          number>down number>same opener>the other>before other>like other>no other>sorry preposition>just
          preposition>no preposition>out
        `,
      ],
      [
        0.75,
        `
          ing>with manner>then number>you opener>good opener>shake other>big other>do other>don't other>everyone
          other>he's other>leave other>only other>shoulders other>then other>they've other>twice part>other
          part>then part>where preposition>knees preposition>one preposition>other preposition>two
          preposition>you've unit>with verb>put
        `,
      ],
      [
        0.5,
        `
          article>and article>no auxiliary>that's because>um contraction>for contraction>nearly ing>i ing>keep
          ing>little ing>then kit>feet kit>the kit>then manner>knee manner>no manner>not manner>same manner>up
          number>and number>as number>have number>lovely number>no number>rest number>so number>there number>this
          number>with opener>feet opener>first other>after other>all other>arms other>ask other>back other>backs
          other>bring other>ease other>get other>go other>he other>knees other>let other>long other>look
          other>lovely other>my other>nobody other>nobody's other>other other>palms other>remember other>right
          other>round other>same other>sit other>so other>soft other>standing other>support other>there's
          other>twenty other>well other>which other>you're part>arms part>between part>both part>elbows part>five
          part>flat part>hold part>it part>like part>not part>opposite part>push part>same part>slow part>sort
          part>stop part>the part>they part>walk preposition>arms preposition>back preposition>bring preposition>do
          preposition>four preposition>go preposition>hang preposition>last preposition>so preposition>somebody
          preposition>swing preposition>that's preposition>then preposition>we're pronoun>from pronoun>just
          pronoun>step unit>so unit>that's unit>then verb>an verb>breathe verb>keep verb>or verb>push verb>so
          verb>some verb>we
        `,
      ],
      [
        0.25,
        `
          and>uh article>3 article>at article>er article>go article>hold article>i article>it article>it's
          article>look article>strides article>the article>um article>walk article>your auxiliary>all auxiliary>for
          auxiliary>forty auxiliary>leave auxiliary>tell auxiliary>thank auxiliary>three contraction>what ing>2
          ing>just ing>knees ing>like kit>i kit>it's kit>not kit>or kit>out kit>please kit>stand kit>stay kit>step
          kit>use kit>with kit>you manner>3 manner>about manner>breathe manner>by manner>do manner>down
          manner>hands manner>hold manner>if manner>in manner>just manner>last manner>like manner>long manner>lower
          manner>right manner>roll manner>set manner>sit manner>six manner>that number>10 number>20 number>by
          number>don't number>for number>go number>hold number>keep number>let number>nineteen number>six
          number>slow number>that number>the number>up number>your opener>10 opener>away opener>down opener>evening
          opener>everybody opener>for opener>go opener>half opener>lovely opener>not opener>on opener>put
          opener>stand opener>that's opener>there's opener>this other>about other>add other>baby other>breathe
          other>bye other>carry other>change other>chest other>come other>could other>curl other>double other>draw
          other>elbow other>even other>everybody other>facing other>fifteen other>forty other>front other>good
          other>hands other>i'll other>if other>it's other>keep other>land other>legs other>mine other>moving
          other>nice other>off other>pick other>quick other>ring other>rows other>run other>second other>sharp
          other>somebody other>somebody's other>squeeze other>step other>take other>they other>think other>those
          other>thumbs other>top other>tuck other>um other>under other>until other>whether part>10 part>about
          part>back part>bring part>do part>feet part>float part>half part>i part>it's part>land part>lean
          part>legs part>let part>lower part>put part>sit part>slowly part>squeeze part>tall part>two part>you'll
          preposition>bar preposition>before preposition>bend preposition>both preposition>chest preposition>don't
          preposition>drop preposition>find preposition>give preposition>good preposition>have preposition>i
          preposition>jump preposition>light preposition>not preposition>or preposition>push preposition>reach
          preposition>rings preposition>round preposition>same preposition>second preposition>sixty
          preposition>step preposition>tall preposition>three preposition>turn preposition>years pronoun>bend
          pronoun>breathe pronoun>hold pronoun>i pronoun>into pronoun>lean pronoun>no pronoun>reach pronoun>slide
          pronoun>then pronoun>your unit>do unit>eight unit>four unit>off unit>shake unit>that unit>the unit>thirty
          unit>three unit>twice unit>up unit>we unit>you verb>don't verb>eight verb>halfway verb>hands verb>i
          verb>if verb>knee verb>light verb>like verb>my verb>now verb>sit verb>ten verb>that's verb>then
          verb>twelve verb>walk verb>we'll
        `,
      ],
      [
        -0.25,
        `
          and>a and>don't and>i and>i've and>it's and>let and>not and>so and>that's and>you article>a article>arms
          article>back article>bar article>bit article>bottom article>chair article>chest article>floor
          article>hands article>head article>heel article>hips article>knee article>last article>leg article>legs
          article>little article>minute article>rest article>right article>shoulders article>side article>squeeze
          article>step article>swing article>toes article>wall article>way auxiliary>a auxiliary>do auxiliary>i
          auxiliary>sit auxiliary>this auxiliary>to because>far because>i've because>if because>it because>many
          because>stop because>that's because>they because>well because>you because>you've because>your
          contraction>a contraction>do contraction>done contraction>go contraction>like contraction>the ing>but
          ing>down ing>it ing>off ing>tall ing>that ing>that's ing>to ing>you kit>away kit>breathe kit>for kit>in
          kit>instead kit>is kit>one kit>that kit>this kit>up manner>and manner>back manner>is manner>it's
          manner>leg manner>legs manner>lift manner>neck manner>of manner>out manner>peel manner>steps manner>take
          never>let number>done number>eight number>feet number>foot number>good number>hand number>i number>i'd
          number>metres number>minutes number>sets number>squat number>there's number>times number>weeks opener>as
          opener>but opener>everyone opener>keep opener>knee opener>lot opener>no opener>ones opener>push
          opener>rest opener>set opener>team opener>with opener>you other>and other>apart other>arm other>bit
          other>breath other>can other>coming other>done other>down other>eighty other>either other>eyes other>for
          other>forward other>from other>full other>going other>got other>had other>hand other>has other>heavy
          other>heel other>here other>high other>hold other>how other>instead other>leaves other>lie other>lift
          other>lunges other>means other>nine other>on other>once other>ones other>out other>pain other>people
          other>plank other>point other>pop other>pull other>put other>quads other>roll other>running other>sand
          other>shuffle other>some other>squats other>stretch other>swap other>ten other>them other>there
          other>thighs other>till other>time other>toe other>toes other>together other>tonight other>too other>up
          other>we'll other>we're other>what other>with other>you other>you've part>again part>at part>because
          part>bent part>button part>by part>close part>down part>for part>forward part>goes part>height part>hip
          part>is part>long part>of part>on part>only part>out part>over part>point part>raise part>reach
          part>shoulder part>slide part>stand part>stays part>step part>still part>ten part>this part>to part>under
          part>when part>wide part>width part>with part>you part>you're preposition>10 preposition>3 preposition>a
          preposition>again preposition>and preposition>at preposition>between preposition>each preposition>fifteen
          preposition>first preposition>for preposition>forty preposition>front preposition>get preposition>hand
          preposition>high preposition>higher preposition>hip preposition>is preposition>it preposition>it's
          preposition>leg preposition>look preposition>make preposition>me preposition>next preposition>ninety
          preposition>now preposition>of preposition>quick preposition>seven preposition>six preposition>slower
          preposition>slowly preposition>starts preposition>them preposition>thirty preposition>those
          preposition>till preposition>twelve preposition>we preposition>you preposition>you'll pronoun>can
          pronoun>don't pronoun>feel pronoun>for pronoun>go pronoun>in pronoun>know pronoun>like pronoun>make
          pronoun>push pronoun>up pronoun>were unit>a unit>before unit>between unit>for unit>if unit>is unit>on
          unit>step unit>through unit>to unit>two verb>a verb>as verb>at verb>back verb>chest verb>down verb>lower
          verb>no verb>of verb>on verb>right verb>the verb>them verb>there verb>to verb>ups verb>where
        `,
      ],
      [
        -0.5,
        `
          and>then article>elbows article>feet article>knees article>one article>other auxiliary>not because>i
          because>it's because>you're contraction>not ing>in ing>on ing>you've kit>and kit>press kit>so ly>no
          manner>come manner>for manner>we number>4 number>five number>hundred number>is number>more number>of
          number>on number>one number>or number>seconds number>to opener>in opener>morning opener>stuff opener>up
          opener>week opener>work other>again other>are other>at other>foot other>give other>grip other>it
          other>just other>knee other>me other>next other>over other>rest other>stay other>than other>that
          other>this other>three other>to other>today other>use other>walk other>we other>were other>while
          other>who part>are part>don't part>drop part>open part>pull part>stay part>straight part>together part>up
          preposition>as preposition>down preposition>eight preposition>hold preposition>knee preposition>sit
          preposition>slow preposition>the preposition>there's preposition>to preposition>with preposition>your
          unit>each unit>left unit>of unit>round verb>it verb>tall verb>there's verb>up verb>with verb>your
        `,
      ],
      [
        -0.75,
        `
          number>each opener>one other>as other>first other>leg other>now other>of other>one other>press other>two
          other>your part>and part>blades preposition>there verb>hold
        `,
      ],
    ],
    'class-ahead': [
      [1, 'opener>down opener>in'],
      [
        0.75,
        `
          kit>leg kit>up number>down number>for number>slow number>twelve number>we opener>find opener>that's
          other>by other>leg other>of other>them part>long preposition>as preposition>out unit>on
        `,
      ],
      [
        0.5,
        `
          and>heel article>drink article>seconds auxiliary>five auxiliary>them ing>a ing>it kit>a kit>for kit>i
          kit>then manner>not manner>on number>it number>minutes number>no number>off number>press number>sort
          number>tall number>that opener>can opener>eight opener>it opener>just opener>one opener>two other>all
          other>anybody other>arms other>body other>bring other>can other>cross other>doesn't other>foot
          other>higher other>know other>ninety other>now other>off other>ones other>people other>stays other>stop
          other>straight other>stretch other>there's other>those part>a part>don't part>hand part>it part>knee
          part>lower part>of part>them part>through part>to part>with part>your preposition>about preposition>bent
          preposition>coming preposition>in preposition>keep preposition>like preposition>off preposition>pair
          preposition>pause preposition>soft preposition>stand preposition>up preposition>you've pronoun>behind
          pronoun>lift pronoun>not pronoun>on unit>a unit>minute unit>seconds unit>set unit>twenty unit>up
          verb>call verb>chair verb>dead verb>drive verb>first verb>have verb>is verb>let verb>side verb>you're
        `,
      ],
      [
        0.25,
        `
          and>one and>out and>stop and>that's and>we article>an article>because article>do article>five article>got
          article>home article>i'd article>it's article>leave article>minutes article>nobody article>press
          article>rows article>six article>these article>toes article>too article>want auxiliary>more because>don't
          because>of because>one because>to contraction>i'm contraction>with ing>at ing>down ing>for ing>get ing>i
          ing>not ing>over ing>that's ing>them ing>up kit>hands kit>heel kit>in kit>of kit>one kit>push kit>so
          ly>it manner>by manner>floor manner>got manner>hand manner>i manner>it's manner>lean manner>make
          manner>more manner>off manner>once manner>rest manner>take manner>time manner>up never>a never>i number>1
          number>3 number>about number>after number>feet number>go number>going number>got number>hold number>if
          number>nice number>seven number>shoulders number>six number>that's number>then number>walk opener>done
          opener>five opener>going opener>hip opener>last opener>on opener>same opener>second opener>set opener>sit
          opener>this opener>to opener>we opener>you're other>6 other>across other>and other>as other>at
          other>before other>bit other>box other>climbers other>done other>each other>fast other>first other>five
          other>flat other>get other>hands other>hanging other>have other>hold other>i'm other>if other>is
          other>it's other>just other>love other>low other>metres other>mind other>need other>over other>press
          other>quiet other>ray other>rolled other>round other>seen other>sets other>some other>stay other>than
          other>the other>together other>tuck other>two other>up other>very other>where other>wide other>won't
          other>you part>an part>back part>both part>breath part>breathe part>four part>from part>hands part>it's
          part>knees part>not part>now part>other part>peel part>shoulder part>six part>three part>till part>tucked
          part>twenty part>we'll part>you've preposition>are preposition>arms preposition>away preposition>back
          preposition>bar preposition>be preposition>body preposition>breath preposition>breaths preposition>count
          preposition>do preposition>face preposition>fold preposition>forward preposition>goes preposition>half
          preposition>heel preposition>i'll preposition>it's preposition>jump preposition>knee preposition>lift
          preposition>lighter preposition>long preposition>lot preposition>no preposition>not preposition>on
          preposition>or preposition>put preposition>rings preposition>rounds preposition>squats preposition>swap
          preposition>tall preposition>that preposition>there preposition>under preposition>was preposition>we'll
          preposition>wee pronoun>and pronoun>as pronoun>been pronoun>hands pronoun>here pronoun>just pronoun>knees
          pronoun>nice pronoun>nothing pronoun>of pronoun>okay pronoun>pull pronoun>rest pronoun>say
          pronoun>seconds pronoun>stay pronoun>step pronoun>till pronoun>time pronoun>two unit>back unit>don't
          unit>for unit>four unit>hold unit>in unit>leg unit>minutes unit>round unit>ten unit>them unit>times
          unit>to unit>two verb>3 verb>again verb>behind verb>between verb>can verb>flat verb>going verb>good
          verb>over verb>palms verb>rest verb>round verb>shoulders verb>some verb>squeeze verb>straight verb>then
          verb>walk verb>was
        `,
      ],
      [
        -0.25,
        `
          and>and and>back and>down and>them and>up article>a article>are article>back article>for article>he
          article>i article>if article>it article>knee article>leg article>not article>of article>off article>one
          article>than article>then article>to article>two article>we article>with auxiliary>lift auxiliary>not
          auxiliary>one auxiliary>the auxiliary>to auxiliary>up because>a because>as because>can because>is
          because>it because>it's because>not because>was because>you contraction>a contraction>to contraction>you
          ing>like ing>look ing>out ing>push kit>but kit>come kit>down kit>feet kit>foot kit>hold kit>no kit>not
          kit>off kit>press kit>slide kit>stand kit>the kit>to kit>where kit>you're manner>are manner>back
          manner>can manner>do manner>done manner>each manner>go manner>just manner>let manner>low manner>now
          manner>pull manner>right manner>seconds manner>stay manner>that manner>twenty manner>use manner>way
          manner>you're manner>you've never>your number>all number>breathe number>is number>last number>my
          number>other number>rest number>seconds number>stay number>those number>today number>turn number>way
          opener>at opener>don't opener>feet opener>have opener>it's opener>long opener>minutes opener>not
          opener>of opener>off opener>out opener>pair opener>seconds opener>see opener>slow opener>three
          other>always other>any other>back other>bar other>because other>been other>bend other>bending
          other>between other>both other>breath other>breathing other>but other>close other>drop other>dumbbells
          other>eleven other>feel other>find other>fine other>four other>from other>give other>goes other>had
          other>heavy other>her other>here other>home other>i other>leave other>left other>lie other>march
          other>nice other>no other>pair other>please other>pull other>same other>save other>second other>seven
          other>shake other>should other>side other>sides other>sit other>slowly other>small other>somebody's
          other>sorry other>steps other>that other>till other>top other>turn other>week other>what other>when
          other>with other>you'll part>as part>away part>bend part>bit part>bring part>come part>five part>left
          part>light part>little part>no part>or part>out part>over part>squeeze part>stand part>step part>stop
          part>straight part>they part>this part>time part>together part>turn part>walk preposition>2 preposition>3
          preposition>an preposition>and preposition>at preposition>between preposition>bring preposition>chair
          preposition>eight preposition>front preposition>get preposition>heavy preposition>hips preposition>knees
          preposition>legs preposition>let's preposition>minute preposition>minutes preposition>pull preposition>so
          preposition>squeeze preposition>take preposition>ten preposition>time preposition>we're preposition>where
          preposition>wide preposition>you preposition>you'll pronoun>at pronoun>do pronoun>down pronoun>for
          pronoun>going pronoun>got pronoun>hold pronoun>in pronoun>know pronoun>put pronoun>take pronoun>that's
          pronoun>times pronoun>to unit>about unit>after unit>did unit>fifteen unit>first unit>i'm unit>no unit>off
          unit>the unit>then unit>week verb>arm verb>breathe verb>down verb>for verb>hands verb>now verb>off
          verb>reach verb>seconds verb>sit verb>step verb>them verb>together verb>two verb>use verb>want
        `,
      ],
      [
        -0.5,
        `
          and>it and>the and>your article>and article>don't article>in article>up article>you auxiliary>a ing>do
          ing>if ing>no ing>you ing>your kit>and kit>as number>a number>call number>each number>hips number>i
          number>in number>on number>them number>two number>you're opener>end opener>first opener>hands
          opener>knees opener>rest opener>then other>came other>going other>high other>i've other>knee other>last
          other>lean other>legs other>look other>me other>morning other>or other>other other>so other>ten
          other>want other>we other>we'll other>well part>arms part>like part>off part>that's part>then part>width
          preposition>five preposition>four preposition>hands preposition>height preposition>leg preposition>of
          preposition>round preposition>that's preposition>you're preposition>your pronoun>then pronoun>up unit>and
          unit>half unit>i unit>metres unit>side verb>a verb>it's verb>knee verb>one verb>stay verb>you
        `,
      ],
      [-0.75, "number>i'm number>of unit>so"],
    ],
    ahead: [
      [1.5, 'off>you'],
      [1.25, 'and>if have>a'],
      [1, "and>we'll it>should same>thing up>up you>stop"],
      [
        0.75,
        `
          a>few all>of and>i and>lower and>there as>if bar>on both>hands by>the carry>on come>back come>in find>a
          if>it is>it is>that it's>only it>isn't keep>them let>go like>somebody's like>you've nice>and not>the
          roll>to stop>and thank>you this>is three>rounds up>on which>is you>put
        `,
      ],
      [
        0.5,
        `
          20>seconds 3>sets a>chair a>cushion a>hip a>minute about>a and>bring and>he and>it's and>no and>push
          and>there's and>this and>we and>you'll arms>out back>flat back>leg back>squat back>up bring>a bring>them
          but>not can>you do>a do>not don't>let down>and down>at down>two ease>off even>if feet>flat feet>under
          five>more for>three forty>five forty>seconds four>and four>breaths four>five get>your go>keep
          goblet>squats hand>over hands>up head>on heel>and hike>it hold>on hollow>hold i>can i>don't i>know i>see
          i>want in>as is>all it>doesn't it>was just>the just>you keep>it knee>raises lead>with leave>it leg>swings
          legs>out lift>one like>the like>there's look>at me>and mind>the no>it's no>more no>rest on>my or>the
          or>you other>one out>as out>coming push>it put>it rack>it rest>a same>again same>time second>lot set>the
          shake>the sit>straight slow>down so>if so>that's soft>knees some>people sort>of split>squats squeeze>your
          stand>it straight>into tell>me ten>of ten>steps that's>how that's>the that's>your that>knee that>was
          the>dead the>first the>good then>let then>swap then>switch then>we there's>no three>to twice>through
          two>three walk>back where>the with>a you're>not you>don't you>look
        `,
      ],
      [
        0.25,
        `
          10>and 2>1 5>and a>dumbbell a>folded a>pause a>very about>ninety about>twenty all>in all>right
          and>breathe and>change and>hang and>have and>leave and>now and>pull and>rest and>slide and>squeeze
          and>ten and>that's and>tuck and>two and>up arms>by arms>straight at>home back>heel back>of bar>over
          bending>the big>breath both>arms both>feet both>sides breathe>in breathe>out bring>your by>your
          calf>stretch check>the chest>to do>your does>this don't>rush down>by down>for down>onto down>three
          down>till down>to drive>through drop>the each>one eight>nine eight>of elbows>back elbows>straight
          empty>bar every>single eyes>on feet>hip feet>together feet>wide fingertips>on five>minutes five>six
          flat>back float>the for>six forearm>plank forward>and from>the front>heel go>back go>don't go>on
          good>good half>the hands>behind hands>off hands>on hands>over hang>off hanging>off have>some heel>on
          heels>a high>knees hold>for i'm>not i>love i>mean i>thought in>a in>through in>two isn't>it it's>not
          it's>on it>helps keep>a keep>your knee>in knees>bent knees>don't knees>under knees>up land>soft last>one
          last>round lean>forward leave>the leg>up legs>up let>it let>the let>them lie>on light>on light>pair
          like>a like>you're long>arms lying>on minute>between mountain>climbers my>first near>hand near>the
          ninety>seconds no>further no>shame no>weight not>on not>that not>your on>to on>you one>foot one>more
          one>then one>two opposite>leg or>just or>put other>hand other>knee out>at out>through out>to pull>the
          quick>feet quiet>feet rest>for rest>your reverse>lunges ribs>and right>arm roll>it see>you shake>it
          shoulders>and side>plank single>leg sip>of sit>on six>on slide>one slow>don't small>and snap>the so>don't
          so>it's so>the so>you stand>and stand>up standing>with step>and stop>there support>hold swap>at swing>it
          take>one take>your tall>hips tap>the ten>seconds that's>all the>opposite the>rest the>second the>shoulder
          the>shoulders the>window then>back there>you these>at think>of this>one's three>four tuck>your turn>it
          twenty>off twenty>seconds twice>a two>lots two>times two>to under>the until>the up>we'll use>your
          wait>for walk>your watch>for we're>on we've>got we>won't well>done wet>leaves when>it while>i wider>than
          with>some you'll>do you'll>have you>can't you>did you>have you>hold you>should you>skip your>wrists
        `,
      ],
      [
        -0.25,
        `
          a>day a>foot a>little a>skip a>week about>it all>fours and>call and>drop and>feel and>five and>give
          and>hold and>i'm and>knees and>lean and>lie and>look and>low and>make and>one and>put and>right and>round
          and>she's and>sit and>switch and>they and>your arm>and as>it as>the as>we as>you as>your ask>me at>your
          back>down back>on before>you behind>you bit>of blood>pressure both>knees breathe>into bring>the but>i
          come>on couple>of do>it don't>arch don't>bounce don't>lean don't>reach don't>throw don't>tip don't>yank
          down>if down>it's draw>the drive>the drop>your each>side eight>and eight>don't elbow>under elbows>under
          every>day every>rep eyes>up facing>the five>breaths five>four five>if five>seconds foot>on for>ten
          for>two forearms>on four>out go>home go>to go>two heel>up here>we hold>of hundred>and i'd>like i'll>show
          i>am i>started if>i if>you if>you're in>between it's>called it's>that it's>too it's>up it>and it>don't
          it>down it>if it>in it>out just>lift just>outside knee>down knee>over knee>up knees>down lean>your
          legs>long let>me lets>you level>with lie>back like>it like>it's lower>it lower>the lower>your make>sure
          mini>squats next>week nine>ten not>for not>there now>and of>it of>those of>you off>and on>each on>it
          on>the one>go one>is one>of one>straight one>way out>of over>the over>your pop>the pull>it push>off
          push>through push>up put>a put>one reach>your rest>the right>down ring>rows roll>back roll>out roll>over
          second>time seven>and shoulder>width sit>to sit>your slide>forward slow>on so>that so>this so>your
          some>of somebody>asked stay>for stay>on step>back step>it step>one straight>leg straighten>one swap>over
          ten>to that's>not that's>one that's>us the>back the>chair the>front the>hips the>knee the>mat the>middle
          the>next the>same the>seat the>top the>wall the>whole then>a then>straight then>the there>was
          this>morning three>is three>seconds three>sets three>times three>two through>the to>go to>your toes>and
          twelve>and two>one two>seconds up>in was>a we're>not we>do when>you've where>you while>you with>it
          with>the with>your you're>going you're>leaning you're>on you're>ready you've>a you've>got you>come you>go
          you>want your>back your>breath your>feet your>hips your>lower your>shoulders
        `,
      ],
      [
        -0.5,
        `
          a>side and>eight and>i've and>not and>out and>row and>stand and>tell and>walk as>well at>the come>to
          do>the don't>like eight>a find>the for>a i>did if>the if>your in>front is>a is>the it's>the it's>there
          it>up keep>hold let>you lift>it makes>it not>to number>two of>the of>them of>your off>the on>a one>and
          one>the pull>your slide>your so>it that's>been the>floor the>swing the>way then>you thirty>seconds
          this>time to>the use>a when>you you'll>want
        `,
      ],
      [-0.75, "and>a and>back or>so then>it's"],
      [-1, 'and>it'],
    ],
    behind: [
      [1.25, 'you>like'],
      [
        1,
        `
          a>rest a>week behind>you come>in come>on four>five go>on in>front it>is step>back that's>it you>land
        `,
      ],
      [
        0.75,
        `
          a>little a>pair a>side and>over and>rows and>six and>three each>leg feet>down keep>breathing knees>bent
          knees>in knees>up know>what last>one leg>up of>them of>those on>it on>saturday other>day ten>no
          ten>seconds the>bed the>bottom the>clock the>line the>top third>one two>one wall>sit your>breath
          your>hands your>side
        `,
      ],
      [
        0.5,
        `
          2>1 a>drink a>friend a>mat a>moment a>skip a>squat a>towel a>while after>that all>right and>breathe
          and>drop and>go and>leg and>low at>home at>you carry>on chest>height count>it don't>like down>slow
          each>arm each>side eighty>metres empty>bar five>six floor>away for>ten for>thirty from>it hang>on
          heel>down hip>height hips>up hold>it hold>on how>many i>started is>fine isn't>it it>hold it>look
          keep>hold leaning>back leg>only legs>long mean>it minutes>between morning>all next>up no>rest of>10 of>5
          of>all of>six of>these of>twelve off>four on>hips on>these one>hand one>leg one>then or>so press>ups
          roll>over round>two same>again seconds>down see>you shoulder>blades shoulders>up sit>on squat>jumps
          thank>you that's>fine the>air the>belly the>floor the>head the>mailbox the>morning the>nose the>right
          the>row the>wall the>worktop thirty>seconds to>finish to>it to>you too>heavy turn>round two>goes two>sets
          two>three under>shoulders up>up whole>way with>that you're>new you>are your>bottom your>ears your>foot
          your>hip your>hips your>shoulders your>sides your>time your>toes
        `,
      ],
      [
        0.25,
        `
          20>seconds a>block a>breather a>cushion a>doddle a>minute a>pendulum a>sip all>fours an>inch and>change
          and>done and>knees and>lift and>no and>out and>sit and>slow and>switch and>that's and>up are>fine
          are>tight are>up arms>straight as>well back>down back>in back>squat back>there belly>button both>legs
          both>sides breath>in breathe>out breaths>here chest>up comes>in dead>bugs dead>lift doing>it down>and
          down>hold down>two eighteen>nineteen elbows>back every>day every>week feet>flat feet>together feet>under
          feet>wide first>lot first>time five>on five>then flat>back foot>flat foot>on foot>up for>3 for>five
          for>forty for>two from>there front>squats get>off gives>way go>keep go>then go>two going>down going>too
          hands>in hang>off heel>up heels>together higher>up hinge>forward hip>width hips>back i'm>not i>did in>out
          in>this in>you into>it is>plenty it>goes it>good it>right it>two it>was jump>up just>the keep>going
          knee>down land>soft leg>behind legs>out let>go let>you lie>back lifts>off like>this long>step lost>count
          march>it no>weights of>eight of>ten of>water of>you on>you one>knee one>more one>two opposite>leg
          other>knee other>leg out>there over>toes quiet>feet ribs>down right>hand roll>out second>toe seconds>each
          seconds>left seconds>off seconds>on shake>out sharp>pain side>on sit>down slow>down squeeze>it stand>tall
          start>with stay>on stays>heavy straight>down straight>up ten>times than>that that'll>do that>one
          that>three the>anchor the>bear the>bench the>bend the>bum the>cat the>ceiling the>edge the>fence the>hall
          the>hamstrings the>hip the>last the>left the>middle the>minute the>mirror the>neck the>spot the>stage
          the>straight the>thigh them>in then>turn there>is they>do three>four three>minutes to>end to>me to>round
          to>side to>stand to>ten to>this too>far twenty>off twice>through under>you up>there upper>back walk>back
          want>more was>a way>down we>are we>finish we>were we>won't whole>thing with>it you>go you>hold your>back
          your>chest your>laces your>legs your>midwife your>spine your>tail
        `,
      ],
      [
        -0.25,
        `
          3>times 45>seconds a>bar a>bell a>chair a>hand a>leg a>race a>shoulder a>slow a>spot a>step a>wee and>a
          and>down and>five and>hang and>let and>one and>right and>stand and>ten and>the and>then and>walk and>you
          arms>out at>the at>your back>and back>flat back>leg back>to been>told bench>press big>toe can>hear
          can>see can>tell child's>pose count>out do>it do>not do>that do>this don't>lean done>up down>three
          each>one end>good evening>all feet>on feet>out first>two for>a for>the for>those forty>five four>breaths
          from>the give>me go>again go>so goes>up good>leg half>past half>way hand>on have>a i>said i>thought if>it
          if>the if>you're if>you've if>your in>the in>there is>it it's>not it>and it>go it>up knee>raises
          knees>over lamp>post leg>goes leg>swings legs>up let>them let>us lie>down like>a like>it like>you
          lower>back make>it next>week nice>and ninety>seconds no>higher not>a of>five of>floor of>that of>your
          off>the off>you on>a on>one on>your one>down one>foot one>side one>up other>arm other>way out>straight
          over>the park>it pelvic>floor people>say press>down push>back roll>back same>time second>one seconds>rest
          showing>off some>people stay>tall stay>there step>away step>off straight>leg support>hold ten>steps
          than>you that's>a that's>all that>leg the>ankles the>bell the>big the>body the>day the>door the>ear
          the>front the>good the>hand the>handle the>hands the>next the>opposite the>other the>press the>sheet
          the>shoulder the>standing the>straps the>third the>whole the>window the>wrists them>up then>press
          this>morning this>one's to>get to>say to>see to>the to>your toes>down turned>out two>hundred two>seconds
          two>thousand under>your up>again up>and up>on up>quick up>you we'll>go we>go we>start well>done with>a
          with>the with>your you've>done you>feel you>lot you>lower you>want your>back's your>head's your>heel
          your>knee your>lower your>middle your>nose your>own your>ribs your>shins your>straps your>thigh
          your>wrists
        `,
      ],
      [
        -0.5,
        `
          a>breath a>knee as>you call>it every>exercise five>four four>times go>one hands>on if>you in>it in>one
          it>out keep>it let>it of>the on>the one>minute pull>up sets>of sit>up sort>of tell>me the>back the>best
          the>bus the>chest the>elbows the>first the>joint the>leg the>rail the>second the>towel three>seconds
          too>high you>can you>can't you>come your>bum your>knees your>right your>tailbone
        `,
      ],
      [-0.75, 'before>you come>down two>minutes'],
    ],
    gap: [
      [1, 'up>up'],
      [0.75, 'back>the four>five leg>and one>the'],
      [
        0.5,
        `
          8>and a>um back>knees back>so back>then bit>if down>no down>out find>your five>six good>good half>and
          in>it it>from it>your know>the legs>and now>i on>twenty one>down one>if out>two pause>and shoulders>on
          so>the spot>on stop>for ten>no that's>what there>if thighs>and three>and three>four up>all up>arms
          up>back ups>and week>and
        `,
      ],
      [
        0.25,
        `
          3>2 again>and back>arms back>like back>on bend>the breathe>don't breather>then breaths>and chair>feet
          come>on down>a down>lift down>one down>you eight>and eighteen>nineteen feet>if fifteen>then first>then
          first>two five>and floor>then foot>flat foot>if four>and front>and go>go good>that's hands>and hips>toes
          home>and in>and in>as in>find in>keep in>one is>it it>all it>and it>don't it>hold it>i it>into it>it's
          it>just it>so it>ten knee>down knee>push knees>as like>it long>and low>and lower>and me>and me>the
          middle>and mind>the nine>and no>it's off>a off>don't on>every on>my one>and one>go one>rest out>a out>in
          out>the over>on round>and rounds>and seconds>four seconds>three seven>and seven>eight shoulders>and
          shoulders>knees side>elbow six>seven so>you stand>and stand>it standing>with swinging>you're tall>on
          them>and then>the then>up there>that's these>and these>at this>with times>and today>so towel>and up>and
          up>if up>one up>out up>two up>your you>as you>keep
        `,
      ],
      [
        -0.25,
        `
          10>and again>if all>right all>the and>i and>i've and>if and>let and>not and>that's and>the arm>and
          as>well as>you at>the back>and back>down back>foot back>leg back>starts back>to before>you behind>you
          belly>button bench>press big>toe big>toes bit>wider bottom>knee breath>and bus>stop call>it chest>and
          come>and don't>let down>as down>for down>the elbows>and even>if face>the feet>and feet>flat first>if
          first>lot first>one flat>and floor>away floor>if for>the for>two forward>and four>three front>of
          good>morning hands>on head>and here>and high>knees hold>it hold>the hollow>hold if>it's if>that's if>the
          if>you if>you're if>your in>a inch>off is>the it's>not it>a it>for it>like it>up keep>hold knees>and
          knees>if know>it last>but last>one leave>the leg>stand legs>the let>go like>a lost>count lot>of makes>it
          metres>and middle>toes minute>and minutes>rest no>rest of>the of>you of>your off>the oh>that's on>hips
          on>it on>to on>top on>your one>foot one>hand one>more one>that's one>then or>so other>one out>and out>as
          out>like out>of over>the press>and quick>feet right>up rings>and round>one round>two round>your second>go
          second>one seconds>on see>you sets>of sharp>pain shoulder>that's shoulders>let side>on side>plank six>and
          skip>the soft>knees squat>hold squats>hold straight>and straight>arms that>you the>back the>floor
          the>other the>same there>is there>you thigh>and this>one through>the time>i time>round to>come to>do
          to>get to>go to>make to>the today>and twenty>five twenty>two under>shoulders up>as up>breathe up>for
          up>higher up>or up>there up>with ups>hands wall>sit way>and way>down way>up well>done wet>leaves
          width>and with>a with>no with>the you>all you>can you>come you>don't you>know your>back your>feet
          your>hands your>hips your>knees your>shoulders your>toes
        `,
      ],
      [
        -0.5,
        `
          back>heel back>knee back>up bar>and bench>and breathe>out down>like feet>hip foot>and forty>five
          front>heel half>a hundred>and in>front in>the lift>one like>you're lunges>and next>week nice>and on>one
          on>the ready>and rest>the round>the seconds>left side>if squat>and step>one stop>and thank>you there>and
          up>to you>and
        `,
      ],
      [-0.75, 'and>then down>and shoulder>blades'],
    ],
  },
  stop: {
    always: [[-0.25, 'yes']],
    before: [
      [1.25, 'again away well'],
      [1, 'down higher instead more rounds rows sag these up'],
      [
        0.75,
        `
          between bit carry change cheating crate drive fine four free grand hair jump left length march off ones
          racks relax rest runners running seven sides tall ten that those through twice wiggle
        `,
      ],
      [
        0.5,
        `
          6 8 ahead anyway arm asking back beautiful behind bells bounce box brave bridge bucks carefully carries
          christmas class clever close closer comfy complain completely control cool count counts cow crawl curls
          daughter day deckchair diary drink dropping early eight enough exam favourite fingers flamingo flying
          forward friends further gate glass go gorgeous ground happy hiding hmm holds home huskies it jeans job
          kickstand landing later life lifting line loop lovely magic marcus middle mind moaning moment move
          neighbour night noise numbers out pauline pigeon pillow please pockets problem proud pull purple
          questions quickly quietly ready relaxed rock rolls s sheet shin shop shout sigh six skipping sofa soup
          spine spring stops stretch strict switch tent there thighs thing three tidiest tidy tightrope time today
          together topple tough tss tucked tucks walk water wave weddings weekend width wobbling
        `,
      ],
      [
        0.25,
        `
          'em 15 24 90 alone alright am ankling arch armpits august backs backside bag balancing band bank barn
          beach beat begin belt blanket board bone boots bored both breathe breather breathing breaths brilliant
          brisk brought bucket bug busy chin complaints controlled cooked council counter couple cramps curb
          cushion deep degrees depth difference dinner direction doll done each ears everybody everywhere extra
          fabulous fancy fence finger finisher five flare floor flow follow fourteen frog front gas going good
          grabbing granddaughter grass handbags hard harder heavy heels help here heroes him himself hm holiday
          hollow honestly hugs impact in inwards jacket jaw jaws jogging joking kick kind kinder kiss kissing lads
          language lap laughed lean leaves leg legs less level lifts list lives lock lot loves low lunge mats menu
          midline minds mondays morning mostly moves nearer newer nicer nose nothing o'clock okay opening over
          paddle pair passes paying pickpockets planted plate play plenty plonking plop pocket pose position
          postman presses pretty prize promised quads quiet rail rain raise ratio reach return righto ron room rude
          sand scarf screen seconds session set shape shirt show shrug side sit skaters slip slower sock softly
          solid sorry space spaniel stair stairs stand stepping stomach stomping straighten strength strides string
          stuff sunday surgery swinging t table taller tap taps team teeth this thursday times toaster tomorrow top
          tops tracks treacle trees trip trips tuck twelve twisted twisting underwater uphill ups us version video
          voice waiting wants warm weights welcome went wheels wider widest wings wobble won't years yourselves
        `,
      ],
      [
        -0.25,
        `
          100 2 5 7 ache after also anyone arm's around asked bad bare been before belly below bird blocks blood
          blue bones brace break breath bring butt can can't chain chap check coat could couldn't course cross
          crossed crosses deadlifts didn't different dips distance do does doesn't dog dogs dollars draw drill duck
          dull ear eights else even evenings everyone's except excuse facing faster feeling fella fifty figure find
          flexors floor's forearms forehead found friend gap give green groaning gym handed handle has haven't he'd
          headed heart heavier hello hitting horns hurt hurts i i'll imaginary incline inner iron is isn't it'd jab
          july k kicks kilo knee's kneecap knuckles land leaning leg's let's lets letting lie lights loo lost
          lowest lunch lying mailbox main margaret marged metre mid milk minutes mornings near never new next no
          noodle normal not number once opposite option outside own palms panic park past pause pelvic percent
          perfectly person pew pins planks point points pressure puddle puff pulled raised rather real really roll
          rolled rolling rope row rule safeties saturday scoop seen sharp showing silly simple since sixteen sled
          sleepy slides slow small smooth something sore sort sound split squash squats squeeze stage static
          station steady stiff straight strain strip struggling surface surgeon sweep swimmy tail tell thank
          there's they'd things think thinks thirteen though thought thousand throw tiles tilts told took towards
          trouble two's until wake walking wall was watching we're wee weeks weigh weren't whatever when whenever
          while who widen works worry would wouldn't ye you you'd you'll yourself
        `,
      ],
      [
        -0.5,
        `
          about across actually an anybody back's bar be bear because beginners bench bike blow bow burpees but by
          calf call called car clean coach come comes dodgy doing don't dumb dumbbell elbows ever every everything
          exercise feel first from getting had hamstrings have he head head's hip hour i'm i've if into it's keep
          knee know lane leave let lighter like little locked make means metres minute's muscle my nearly ninety
          nobody nobody's oh old one's only onto operated pain pretend proper put reds resting says seated short
          should shoulder sixty skip so some somebody somebody's squat stacked standing stay stays stool sure takes
          that's the they they've till tiptoes track tummy use very we'll weight wherever will with without year
          you're you've your
        `,
      ],
      [
        -0.75,
        `
          a all and as at best dead eighty er finally for full get gets got half hear how kneeling last of or
          people plates ring said same single still straps take than to uh we week where whole
        `,
      ],
      [-1, 'feels forty just second see what'],
      [-1.25, 'big say um'],
    ],
    before2: [
      [1, 'comes need'],
      [0.75, "being bus each facing grip's kitchen letter live milk slam thank too wet"],
      [
        0.5,
        `
          'em 1 5 almost baby bank begin behind belly bounce calves cave change chasing coat come drift drive dumb
          effort evening fall fancy farmer's favourite feels fingertips gone halve hamstrings hang higher its join
          last lean lino listen marching medal minute mornings nineteen no nobody's opposite other own proper
          puddle rack ratio real really romanian sat settle shoe sideways silly soft soften somebody stays still
          stood stopped suitcase telly that'll that's them ticking track tuck underneath waist washing way week's
          welcome went whatever's zip
        `,
      ],
      [
        0.25,
        `
          25 7 age among another arc arms arrow balance bare be bear bins bridges buckle carry carrying cat catch
          caught chairs chest chicken child's clock's coming complaints copy country creeping depth didn't dips
          dive door drops even everyone's except eye fabulous fan fell fight filing fingers flamingo float for
          frame gather goblet good hated help hike hiking hollow hovering hurry inch inside invisible jab joints
          joyce kick kissing lamp land lap laughed less line little load looking lunges main mat mostly move moving
          natural neighbours nine now okay old paced palm park past phones pli pocket pockets pogo pools pose
          pounds pretty probably puffed pulled questions quiet rag rain raises relaxed reps resist roll rolling
          rucksack rush scoot second shaky's shift shoes shopping shoulder show sigh since sink sleeping smell
          socks some spend stiff straighten strong sweeps switch tables tail taking talk teapot teeth thanks their
          they're thirteen tied tight times torn trouble tucked twice twisted wasn't we're wear wee weights whisker
          whole will without woman wring you're yourself
        `,
      ],
      [
        -0.25,
        `
          2 4 40 8 90 allowed an ankle ankles anybody anything anyway as ask asleep at back band barbell beat
          because bed bending bicep biggest blade bottle breathing bridge bugs but buttock by calls clock club
          collar confident cool counting counts creep day deep disc do does down drag eighty empty er everything
          exercise fifty find fine finish five floor fold force forty forward four fourteen getting going grab
          green hair hand handle hangers hard height her here him hold how's hundred i'll i'm ice idea it'll jacks
          jerking just keep knee's kneecap knees leaves legs let's level lots makes man march mind minutes miss
          months more mouth never next ninety o'clock oak on only pay plank plenty point power press pressed
          pressure priya quads quick race rail rest reverse rise says school seat seated session shake she sheet
          shoot shoulders shuffle six skip slowly smaller soles sore sort squeezes stage start started starts step
          straight straps stretch strict tattie tea there they they've thigh thighs think thirty thousand through
          time to today tomorrow tonight touch tray tummy up use view was watching we we've weigh which whichever
          who's whoever's wide width wife with won't would
        `,
      ],
      [
        -0.5,
        `
          3 again arm away b box breath breathe bring can't chair clean could cross don't drink eight elbow enough
          face first foot front full glute go hands has he hug i i'd i've if in jog knee lateral leg lift lifts
          like lying metres most once or out pain pair please pull put rounds seconds sets sled so squeeze station
          steps swing take tall that then there's these thing those till told twelve um until upside want warm
          we'll weight what when where while who you'll you've
        `,
      ],
      [-0.75, 'can ceiling did end give how know let make people something very week weeks'],
      [-1, 'before'],
    ],
    classes: [
      [1, 'article>and verb>kit verb>verb'],
      [
        0.75,
        `
          article>contraction auxiliary>and ing>number number>contraction number>opener number>verb opener>opener
          opener>verb part>number part>pronoun preposition>never pronoun>number pronoun>part unit>other unit>part
          verb>part
        `,
      ],
      [
        0.5,
        `
          article>article because>part ing>auxiliary ing>never ing>opener ing>part ing>verb kit>contraction
          kit>part manner>contraction manner>opener manner>pronoun manner>verb never>pronoun number>because
          number>never other>contraction other>kit other>never other>opener other>part other>verb part>article
          part>kit part>part preposition>contraction preposition>verb pronoun>article pronoun>pronoun unit>ly
          unit>verb verb>opener
        `,
      ],
      [
        0.25,
        `
          article>pronoun auxiliary>contraction auxiliary>unit ing>unit kit>article kit>kit kit>manner kit>number
          kit>verb ly>because ly>contraction ly>preposition ly>pronoun ly>verb manner>article manner>never
          manner>number number>and number>manner number>number number>part number>pronoun opener>article
          opener>auxiliary opener>because opener>contraction opener>other opener>part other>number
          preposition>auxiliary preposition>kit preposition>opener preposition>part preposition>unit pronoun>kit
          unit>article unit>contraction unit>kit unit>never verb>auxiliary verb>contraction verb>never verb>unit
        `,
      ],
      [
        -0.25,
        `
          and>opener and>preposition article>auxiliary auxiliary>auxiliary auxiliary>never auxiliary>other
          because>auxiliary contraction>article contraction>pronoun ing>ing ing>pronoun kit>auxiliary
          manner>auxiliary manner>because manner>manner never>auxiliary never>opener number>auxiliary
          number>preposition opener>ly other>because part>auxiliary part>because part>ing part>manner
          preposition>article preposition>ly preposition>manner preposition>number preposition>preposition
          preposition>pronoun pronoun>ing pronoun>other pronoun>preposition unit>auxiliary verb>because verb>ing
          verb>ly verb>manner
        `,
      ],
      [
        -0.5,
        `
          and>and and>article and>auxiliary and>because and>manner and>never and>other and>pronoun article>ing
          article>kit article>manner article>number article>opener article>other article>part article>preposition
          article>unit article>verb auxiliary>article auxiliary>ing auxiliary>manner auxiliary>preposition
          auxiliary>pronoun auxiliary>verb because>article because>because because>manner because>number
          because>other because>pronoun contraction>auxiliary contraction>ing contraction>manner contraction>never
          contraction>number contraction>other contraction>preposition ing>article kit>and kit>because
          kit>preposition manner>preposition never>ing never>other never>verb number>unit opener>and other>ly
          other>preposition part>and part>preposition preposition>ing pronoun>auxiliary pronoun>never pronoun>verb
          unit>because unit>preposition unit>unit verb>article verb>preposition verb>pronoun
        `,
      ],
      [
        -0.75,
        `
          and>contraction and>number and>verb auxiliary>number because>contraction contraction>opener
          contraction>verb ing>preposition
        `,
      ],
    ],
    opening: [
      [1, 'and>opener'],
      [
        0.75,
        `
          article>auxiliary auxiliary>pronoun because>ing contraction>article kit>preposition never>verb
          number>number pronoun>auxiliary unit>number verb>article
        `,
      ],
      [
        0.5,
        `
          and>because and>preposition auxiliary>never contraction>ly contraction>number contraction>unit
          kit>pronoun ly>article manner>part number>and opener>number opener>opener opener>other opener>unit
          part>auxiliary part>manner pronoun>never verb>ing
        `,
      ],
      [
        0.25,
        `
          article>ing because>preposition contraction>verb ing>part kit>number manner>auxiliary never>ly
          never>other number>kit opener>and opener>article opener>pronoun other>ing part>never unit>unit
        `,
      ],
      [
        -0.25,
        `
          and>never and>number and>verb article>and article>because article>contraction article>kit article>manner
          article>opener article>other article>part article>preposition article>pronoun article>unit
          auxiliary>manner because>contraction because>opener contraction>other contraction>part
          contraction>preposition ing>auxiliary ing>manner ing>pronoun ing>unit ing>verb kit>part ly>opener
          ly>other ly>preposition ly>verb manner>because manner>ing manner>manner manner>other manner>unit
          manner>verb never>article never>auxiliary number>contraction number>ing number>never number>opener
          number>part number>pronoun opener>kit opener>manner opener>preposition other>end other>opener
          other>preposition other>pronoun part>and part>contraction part>kit part>verb preposition>and
          preposition>part preposition>pronoun pronoun>part unit>kit unit>manner unit>opener unit>other verb>and
          verb>auxiliary verb>contraction verb>number verb>opener verb>other
        `,
      ],
      [
        -0.5,
        `
          and>auxiliary and>ing and>other and>part and>pronoun article>article auxiliary>auxiliary auxiliary>ing
          auxiliary>number auxiliary>opener auxiliary>other auxiliary>preposition auxiliary>verb because>manner
          because>never because>pronoun contraction>ing ing>and ing>article ing>because ing>number ing>preposition
          kit>and kit>because kit>contraction manner>and manner>contraction never>preposition number>auxiliary
          number>other opener>end other>and other>because other>contraction other>manner other>never other>number
          other>verb part>because part>number part>opener part>pronoun preposition>article preposition>auxiliary
          preposition>contraction preposition>ing preposition>kit preposition>never preposition>number
          preposition>other preposition>verb pronoun>and pronoun>article pronoun>because pronoun>ing pronoun>kit
          pronoun>number pronoun>opener pronoun>preposition pronoun>verb unit>and unit>contraction unit>preposition
          unit>verb verb>kit verb>verb
        `,
      ],
      [-0.75, 'because>verb manner>never unit>because'],
    ],
    closing: [
      [1, 'verb>ly'],
      [
        0.75,
        `
          and>opener ing>pronoun kit>opener number>number number>opener opener>manner opener>number
          preposition>pronoun
        `,
      ],
      [
        0.5,
        `
          and>preposition article>verb auxiliary>pronoun contraction>pronoun kit>number ly>verb manner>manner
          manner>number manner>part manner>unit never>other opener>kit opener>ly other>opener part>manner
          preposition>manner preposition>opener pronoun>number unit>opener verb>opener
        `,
      ],
      [
        0.25,
        `
          and>number and>unit article>kit article>part article>unit because>never because>preposition
          contraction>other ing>number ing>opener ing>preposition kit>ly ly>ing manner>ly manner>opener
          opener>other opener>unit other>ly other>pronoun part>ly preposition>ing preposition>other pronoun>ing
          pronoun>ly pronoun>verb verb>auxiliary verb>manner
        `,
      ],
      [
        -0.25,
        `
          and>ly article>and article>pronoun auxiliary>because auxiliary>kit auxiliary>manner auxiliary>opener
          auxiliary>part auxiliary>unit because>manner because>other contraction>because contraction>manner
          contraction>preposition contraction>verb ing>and ing>because ing>contraction ing>part kit>article
          kit>auxiliary manner>article manner>preposition manner>pronoun manner>verb never>article never>opener
          never>preposition never>unit never>verb number>ly number>never number>other number>part
          number>preposition number>pronoun opener>and opener>auxiliary opener>because opener>ing
          opener>preposition opener>verb other>never other>part other>preposition part>article part>contraction
          part>kit part>preposition preposition>kit preposition>never preposition>number preposition>preposition
          preposition>unit preposition>verb pronoun>kit pronoun>manner pronoun>never pronoun>other pronoun>part
          pronoun>pronoun unit>article unit>auxiliary unit>because unit>contraction unit>ing unit>kit
          unit>preposition unit>pronoun verb>never verb>other verb>part verb>preposition verb>unit verb>verb
        `,
      ],
      [
        -0.5,
        `
          and>and and>article and>auxiliary article>auxiliary article>preposition auxiliary>article because>article
          because>auxiliary because>contraction contraction>article contraction>auxiliary contraction>unit
          end>opener ing>article ing>verb kit>and kit>because kit>part kit>preposition manner>and manner>auxiliary
          manner>because manner>contraction never>manner number>and number>article number>auxiliary number>because
          number>contraction opener>article opener>contraction opener>pronoun other>article other>auxiliary
          other>contraction other>verb part>and part>auxiliary part>because part>never part>number part>part
          part>pronoun preposition>and preposition>article preposition>because preposition>contraction pronoun>and
          pronoun>contraction unit>and unit>verb verb>and verb>article verb>because verb>contraction
        `,
      ],
      [
        -0.75,
        `
          and>contraction and>pronoun article>manner article>opener because>pronoun other>and other>because
        `,
      ],
    ],
    around: [
      [1, 'article>other>article'],
      [
        0.75,
        `
          and>number>opener and>opener>number and>other>because and>verb>contraction article>opener>article
          article>other>pronoun article>part>article article>part>number contraction>ing>manner number>number>part
          preposition>article>article preposition>manner>article preposition>number>verb pronoun>opener>contraction
          pronoun>other>and pronoun>other>other verb>number>number verb>other>contraction
        `,
      ],
      [
        0.5,
        `
          and>preposition>and and>preposition>other article>ing>manner article>kit>article article>kit>kit
          article>kit>other article>kit>part article>kit>pronoun article>manner>opener article>number>part
          article>other>manner article>verb>article auxiliary>manner>because auxiliary>other>number
          auxiliary>pronoun>opener because>other>verb contraction>ing>and contraction>number>part
          contraction>other>and contraction>other>opener contraction>pronoun>preposition ing>manner>part
          ing>other>manner ing>other>number ing>preposition>contraction ing>preposition>number ing>pronoun>number
          kit>other>because kit>other>part kit>other>verb manner>opener>pronoun manner>other>ing
          manner>other>pronoun manner>preposition>verb never>other>opener number>ing>other number>number>article
          number>number>contraction number>number>preposition number>number>verb number>opener>preposition
          number>other>verb number>part>opener number>preposition>and number>unit>part opener>and>other
          opener>kit>preposition opener>manner>other opener>opener>and opener>other>number other>article>and
          other>ing>manner other>ing>verb other>kit>article other>kit>number other>number>contraction
          other>number>number other>number>other other>number>pronoun other>opener>other other>other>verb
          other>part>part other>preposition>and other>preposition>auxiliary other>preposition>manner
          other>pronoun>because other>pronoun>contraction other>pronoun>part other>unit>contraction
          other>verb>never other>verb>verb part>manner>manner part>manner>verb part>other>verb
          part>preposition>number part>preposition>other part>preposition>verb part>verb>number part>verb>part
          preposition>ing>preposition preposition>manner>other preposition>manner>pronoun preposition>number>manner
          preposition>number>never preposition>opener>manner preposition>other>contraction preposition>other>never
          preposition>other>verb preposition>part>part preposition>preposition>preposition
          preposition>pronoun>other preposition>pronoun>verb preposition>verb>kit preposition>verb>part
          pronoun>ing>other pronoun>opener>verb pronoun>other>opener verb>manner>contraction verb>manner>number
          verb>other>pronoun verb>preposition>opener verb>preposition>part verb>pronoun>and verb>pronoun>part
          verb>verb>other
        `,
      ],
      [
        0.25,
        `
          and>manner>number and>manner>preposition and>number>other and>number>verb and>opener>opener
          and>opener>part and>other>contraction and>other>other and>part>preposition and>preposition>never
          and>preposition>number and>preposition>part and>verb>because and>verb>opener and>verb>verb
          article>contraction>other article>ing>article article>ing>number article>ing>verb article>kit>manner
          article>kit>verb article>manner>article article>manner>verb article>number>article article>number>manner
          article>opener>contraction article>opener>opener article>opener>other article>other>never
          article>other>number article>part>kit article>part>manner article>preposition>and article>unit>and
          article>unit>contraction article>unit>manner article>unit>other article>verb>and article>verb>contraction
          article>verb>ing article>verb>opener auxiliary>number>other auxiliary>other>auxiliary
          auxiliary>other>because auxiliary>other>other auxiliary>pronoun>other because>opener>other
          because>preposition>article contraction>ing>contraction contraction>manner>because
          contraction>manner>number contraction>opener>and contraction>opener>other contraction>opener>preposition
          contraction>opener>verb contraction>other>other contraction>pronoun>verb ing>and>verb ing>other>part
          ing>other>verb ing>preposition>part ing>preposition>preposition kit>article>ing kit>number>number
          kit>opener>verb kit>other>contraction kit>preposition>never kit>preposition>verb kit>verb>manner
          kit>verb>verb ly>preposition>article ly>verb>article manner>ing>number manner>number>and
          manner>number>number manner>opener>article manner>other>auxiliary manner>other>part manner>part>number
          manner>pronoun>other manner>unit>verb manner>verb>number manner>verb>pronoun never>auxiliary>article
          never>other>manner never>preposition>preposition never>verb>other number>manner>and
          number>manner>preposition number>manner>verb number>number>manner number>number>opener
          number>number>other number>opener>article number>other>auxiliary number>part>manner
          number>preposition>manner number>preposition>opener number>unit>article number>unit>contraction
          number>unit>never number>unit>verb opener>manner>contraction opener>manner>manner opener>manner>number
          opener>number>and opener>number>article opener>number>because opener>number>preposition
          opener>other>contraction opener>other>part opener>other>verb opener>part>other opener>preposition>because
          opener>unit>number opener>verb>verb other>ing>because other>ing>other other>ing>part other>ing>pronoun
          other>kit>because other>kit>other other>manner>article other>manner>contraction other>manner>other
          other>manner>pronoun other>never>verb other>number>kit other>opener>kit other>opener>manner
          other>opener>opener other>opener>part other>opener>unit other>opener>verb other>other>kit
          other>other>other other>other>part other>part>because other>part>never other>part>verb
          other>preposition>kit other>pronoun>opener other>pronoun>other other>unit>article other>verb>kit
          other>verb>part part>ing>article part>ing>number part>manner>contraction part>manner>other
          part>manner>pronoun part>opener>part part>other>article part>other>kit part>other>manner part>other>other
          part>other>part part>other>pronoun part>part>part part>verb>opener part>verb>verb preposition>and>part
          preposition>article>ly preposition>auxiliary>other preposition>ing>part preposition>number>auxiliary
          preposition>opener>article preposition>opener>number preposition>other>auxiliary
          preposition>other>preposition preposition>part>auxiliary preposition>part>number
          preposition>preposition>because preposition>preposition>never preposition>pronoun>article
          preposition>pronoun>part preposition>unit>other preposition>verb>contraction preposition>verb>manner
          pronoun>auxiliary>manner pronoun>ing>pronoun pronoun>never>preposition pronoun>number>article
          pronoun>opener>part pronoun>other>number pronoun>preposition>number pronoun>preposition>opener
          pronoun>preposition>other pronoun>preposition>part pronoun>preposition>pronoun pronoun>verb>pronoun
          unit>manner>other unit>manner>preposition unit>manner>verb unit>number>number unit>opener>opener
          unit>other>and unit>other>article unit>other>pronoun unit>preposition>auxiliary unit>preposition>because
          unit>preposition>unit unit>unit>other verb>article>auxiliary verb>auxiliary>other verb>ing>opener
          verb>number>verb verb>opener>article verb>opener>verb verb>other>ing verb>other>part
          verb>preposition>unit verb>pronoun>contraction
        `,
      ],
      [
        -0.25,
        `
          and>and>verb and>article>number and>article>other and>article>part and>contraction>other
          and>number>article and>number>preposition and>number>pronoun and>opener>contraction and>other>auxiliary
          and>other>number and>part>verb and>preposition>preposition and>preposition>pronoun and>pronoun>auxiliary
          and>pronoun>never and>pronoun>verb and>verb>article and>verb>manner and>verb>pronoun
          article>auxiliary>other article>ing>opener article>ing>part article>kit>preposition article>manner>kit
          article>manner>manner article>manner>number article>manner>part article>manner>preposition
          article>number>contraction article>number>preposition article>number>unit article>opener>and
          article>other>and article>other>verb article>part>preposition article>preposition>other
          article>preposition>preposition article>preposition>unit auxiliary>article>opener auxiliary>article>verb
          auxiliary>ing>other auxiliary>ing>preposition auxiliary>manner>verb auxiliary>never>verb
          auxiliary>opener>and auxiliary>other>manner auxiliary>other>part auxiliary>other>pronoun
          auxiliary>preposition>auxiliary auxiliary>preposition>verb auxiliary>pronoun>ing auxiliary>pronoun>manner
          auxiliary>verb>number because>contraction>other because>manner>because because>pronoun>auxiliary
          contraction>ing>article contraction>manner>verb contraction>never>ing contraction>number>number
          contraction>number>other contraction>opener>contraction contraction>other>article
          contraction>other>preposition ing>article>part ing>manner>other ing>number>other ing>other>other
          ing>preposition>article ing>preposition>opener ing>preposition>verb ing>pronoun>preposition
          kit>number>other kit>opener>preposition kit>other>and kit>other>other kit>other>pronoun
          kit>preposition>and kit>preposition>contraction kit>preposition>part kit>verb>opener manner>article>other
          manner>because>pronoun manner>manner>manner manner>manner>other manner>manner>preposition
          manner>number>unit manner>opener>verb manner>other>and manner>part>and manner>part>article
          manner>part>part manner>preposition>and manner>preposition>article manner>preposition>manner
          manner>preposition>other manner>unit>preposition manner>verb>article manner>verb>manner manner>verb>other
          never>article>other never>ing>contraction never>ing>preposition never>opener>because
          never>other>contraction never>other>preposition never>preposition>other never>verb>opener
          never>verb>preposition number>and>number number>article>other number>manner>number number>number>because
          number>number>unit number>opener>verb number>other>and number>other>number number>part>and
          number>part>other number>part>preposition number>preposition>pronoun number>unit>ing number>unit>manner
          number>unit>preposition number>unit>unit number>verb>pronoun opener>ing>other opener>manner>part
          opener>number>verb opener>opener>contraction opener>opener>opener opener>opener>verb opener>other>never
          opener>other>pronoun opener>part>preposition opener>preposition>article opener>preposition>number
          opener>preposition>preposition opener>pronoun>other other>and>number other>and>opener other>and>part
          other>article>ing other>article>kit other>article>opener other>auxiliary>article other>auxiliary>other
          other>auxiliary>preposition other>auxiliary>pronoun other>because>article other>because>other
          other>contraction>manner other>contraction>number other>ing>article other>ing>contraction
          other>ing>number other>ing>preposition other>kit>auxiliary other>kit>manner other>kit>never
          other>kit>preposition other>manner>manner other>manner>preposition other>never>other other>number>and
          other>number>auxiliary other>number>ing other>number>preposition other>number>unit other>opener>and
          other>opener>ing other>opener>never other>opener>preposition other>other>number other>other>preposition
          other>part>and other>part>contraction other>preposition>because other>preposition>ing
          other>preposition>never other>preposition>other other>preposition>preposition other>pronoun>auxiliary
          other>pronoun>never other>unit>preposition other>verb>and other>verb>preposition part>auxiliary>manner
          part>because>contraction part>because>pronoun part>ing>manner part>ing>preposition part>ing>pronoun
          part>manner>preposition part>number>other part>opener>manner part>opener>preposition part>opener>verb
          part>other>and part>other>opener part>part>preposition part>preposition>article
          part>preposition>auxiliary part>preposition>part part>unit>preposition preposition>article>auxiliary
          preposition>article>ing preposition>article>opener preposition>article>preposition
          preposition>auxiliary>number preposition>because>contraction preposition>because>pronoun
          preposition>ing>pronoun preposition>kit>other preposition>number>article preposition>number>contraction
          preposition>number>part preposition>number>preposition preposition>opener>other
          preposition>opener>pronoun preposition>other>because preposition>other>ing preposition>other>number
          preposition>other>other preposition>other>pronoun preposition>part>opener preposition>preposition>article
          preposition>preposition>manner preposition>unit>verb preposition>verb>article preposition>verb>because
          preposition>verb>pronoun pronoun>auxiliary>ing pronoun>auxiliary>never pronoun>manner>other
          pronoun>never>verb pronoun>number>other pronoun>opener>manner pronoun>other>because
          pronoun>preposition>article pronoun>preposition>preposition pronoun>unit>other pronoun>verb>contraction
          pronoun>verb>part unit>article>other unit>manner>and unit>number>opener unit>number>preposition
          unit>number>unit unit>other>number unit>other>preposition unit>other>unit unit>preposition>other
          unit>unit>preposition verb>and>verb verb>article>number verb>article>opener verb>article>preposition
          verb>article>verb verb>because>pronoun verb>number>manner verb>number>unit verb>opener>and
          verb>opener>other verb>other>article verb>other>because verb>other>number verb>other>other verb>part>verb
          verb>preposition>and verb>preposition>article verb>preposition>auxiliary verb>preposition>because
          verb>pronoun>manner verb>pronoun>opener verb>pronoun>other verb>pronoun>preposition verb>verb>verb
        `,
      ],
      [
        -0.5,
        `
          and>number>manner and>opener>article and>other>and and>other>article and>preposition>manner
          and>pronoun>other and>verb>preposition article>ing>other article>kit>and article>part>auxiliary
          article>preposition>part article>unit>because article>verb>because auxiliary>article>number
          auxiliary>article>other auxiliary>other>preposition because>article>part because>contraction>opener
          because>pronoun>other contraction>article>other contraction>ing>number contraction>ing>preposition
          contraction>manner>pronoun contraction>opener>article contraction>other>pronoun end>opener>opener
          end>opener>other ing>article>other ing>other>preposition kit>and>verb kit>other>article
          kit>preposition>article never>other>other number>manner>other number>manner>unit number>number>never
          number>preposition>article opener>manner>verb other>and>contraction other>and>other other>and>pronoun
          other>and>verb other>article>other other>article>part other>because>contraction other>because>pronoun
          other>contraction>other other>ing>and other>number>manner other>other>auxiliary other>part>preposition
          other>preposition>article other>unit>and other>verb>article other>verb>contraction other>verb>pronoun
          part>and>part part>and>verb part>manner>and part>other>never part>other>preposition part>part>verb
          part>preposition>and part>verb>because part>verb>contraction part>verb>preposition preposition>and>verb
          preposition>article>kit preposition>article>other preposition>article>part preposition>article>unit
          preposition>manner>and preposition>number>unit preposition>part>manner preposition>preposition>number
          preposition>pronoun>because preposition>pronoun>preposition preposition>verb>preposition
          pronoun>auxiliary>auxiliary pronoun>auxiliary>verb pronoun>opener>and pronoun>other>article
          pronoun>other>part pronoun>other>preposition pronoun>other>pronoun unit>other>contraction
          unit>preposition>and unit>preposition>number unit>preposition>verb verb>article>kit verb>article>other
          verb>article>part verb>manner>article verb>manner>preposition verb>number>part verb>other>manner
          verb>other>opener verb>preposition>preposition
        `,
      ],
      [
        -0.75,
        `
          article>kit>because article>manner>other article>opener>number article>other>part because>other>because
          because>pronoun>verb contraction>other>contraction number>number>number number>preposition>number
          part>preposition>because preposition>ing>article verb>other>preposition
        `,
      ],
      [-1, 'article>other>kit'],
    ],
    across: [
      [1, 'number>and>verb part>verb>article'],
      [
        0.75,
        `
          ing>opener>other ing>other>pronoun manner>and>article manner>and>because number>verb>article
          number>verb>preposition other>number>number other>number>part other>opener>number other>part>preposition
          other>preposition>manner other>pronoun>auxiliary part>other>other part>pronoun>other
          preposition>and>article preposition>pronoun>auxiliary unit>and>other unit>other>article verb>opener>other
          verb>verb>article
        `,
      ],
      [
        0.5,
        `
          article>and>article article>number>and article>number>number auxiliary>other>opener ing>number>part
          ing>pronoun>other ing>verb>article ing>verb>verb kit>article>kit kit>article>other
          kit>contraction>article kit>other>other kit>verb>other manner>manner>preposition manner>number>unit
          manner>opener>preposition manner>unit>number number>article>other number>because>article
          number>contraction>article number>number>opener number>number>other number>opener>preposition
          number>opener>pronoun number>preposition>and number>preposition>because number>preposition>preposition
          opener>article>other opener>auxiliary>pronoun opener>because>article opener>contraction>verb
          opener>opener>part opener>other>contraction opener>preposition>pronoun opener>pronoun>auxiliary
          opener>verb>and other>and>opener other>article>auxiliary other>auxiliary>article other>auxiliary>never
          other>auxiliary>pronoun other>because>other other>contraction>article other>ing>other other>ing>part
          other>kit>preposition other>never>manner other>never>verb other>number>and other>opener>article
          other>other>article other>other>part other>pronoun>other other>unit>article other>unit>other
          other>unit>unit other>verb>article other>verb>ing other>verb>preposition part>and>contraction
          part>article>part part>auxiliary>article part>because>ing part>kit>preposition part>manner>because
          part>number>preposition part>opener>opener part>opener>verb part>part>verb preposition>article>auxiliary
          preposition>contraction>number preposition>contraction>other preposition>kit>preposition
          preposition>number>article preposition>opener>unit preposition>other>article preposition>other>auxiliary
          preposition>preposition>because preposition>preposition>part preposition>preposition>preposition
          preposition>verb>because preposition>verb>ing pronoun>and>preposition pronoun>article>part
          pronoun>number>number pronoun>other>unit pronoun>part>other pronoun>pronoun>auxiliary unit>manner>because
          unit>never>verb unit>other>other unit>verb>article verb>article>ing verb>because>contraction
          verb>kit>preposition verb>other>part verb>other>pronoun verb>pronoun>auxiliary verb>verb>number
        `,
      ],
      [
        0.25,
        `
          and>article>part and>other>number and>part>other and>part>part and>preposition>because article>ing>manner
          article>manner>opener article>opener>because article>verb>article auxiliary>article>part
          auxiliary>auxiliary>article auxiliary>number>part auxiliary>other>part auxiliary>preposition>opener
          contraction>contraction>other ing>and>opener ing>article>auxiliary ing>manner>preposition ing>never>other
          ing>number>and ing>number>number ing>other>article ing>other>preposition ing>part>preposition
          ing>verb>other kit>and>article kit>article>ing kit>because>contraction kit>manner>other kit>number>number
          kit>other>number kit>part>other kit>unit>other kit>verb>article manner>article>verb
          manner>contraction>never manner>contraction>opener manner>ing>other manner>kit>preposition
          manner>manner>article manner>manner>other manner>number>number manner>other>other manner>other>pronoun
          manner>part>other manner>part>preposition manner>preposition>manner manner>verb>and
          never>preposition>pronoun number>and>manner number>and>other number>and>preposition number>article>manner
          number>contraction>auxiliary number>manner>manner number>manner>preposition number>manner>verb
          number>never>other number>number>article number>number>contraction number>number>part number>number>verb
          number>opener>and number>other>article number>other>auxiliary number>other>ing number>part>manner
          number>unit>pronoun opener>and>contraction opener>and>opener opener>and>preposition opener>article>opener
          opener>ing>preposition opener>kit>preposition opener>manner>number opener>manner>part opener>number>other
          opener>opener>and opener>opener>preposition opener>other>ing opener>other>other opener>other>preposition
          opener>part>preposition opener>part>verb opener>preposition>preposition opener>unit>other
          opener>verb>verb other>and>auxiliary other>and>verb other>article>number other>article>other
          other>article>unit other>because>preposition other>contraction>auxiliary other>contraction>number
          other>contraction>preposition other>contraction>verb other>kit>number other>kit>pronoun other>kit>unit
          other>manner>article other>never>other other>number>other other>opener>contraction other>opener>unit
          other>other>because other>other>kit other>other>never other>part>ing other>part>manner other>part>other
          other>preposition>because other>preposition>preposition other>pronoun>unit other>unit>number
          other>verb>contraction other>verb>manner other>verb>other part>and>number part>and>opener
          part>and>pronoun part>article>kit part>because>other part>contraction>auxiliary part>manner>article
          part>never>verb part>number>number part>number>unit part>opener>and part>other>contraction part>part>and
          part>part>never part>part>preposition part>preposition>preposition part>pronoun>auxiliary
          part>verb>pronoun preposition>and>and preposition>and>contraction preposition>auxiliary>preposition
          preposition>because>article preposition>because>manner preposition>contraction>opener
          preposition>contraction>verb preposition>opener>article preposition>opener>verb preposition>other>opener
          preposition>other>part preposition>part>auxiliary preposition>part>unit preposition>unit>article
          preposition>unit>preposition preposition>verb>and preposition>verb>article preposition>verb>preposition
          pronoun>and>because pronoun>and>opener pronoun>article>manner pronoun>because>contraction
          pronoun>because>other pronoun>because>pronoun pronoun>contraction>article pronoun>kit>other
          pronoun>manner>opener pronoun>manner>part pronoun>manner>unit pronoun>never>verb
          pronoun>number>preposition pronoun>opener>opener pronoun>other>part pronoun>preposition>number
          pronoun>pronoun>other pronoun>verb>pronoun unit>contraction>other unit>kit>preposition unit>number>and
          unit>opener>article unit>other>preposition unit>part>preposition unit>pronoun>other unit>verb>pronoun
          verb>and>opener verb>and>preposition verb>auxiliary>never verb>contraction>other verb>manner>other
          verb>manner>preposition verb>never>other verb>number>article verb>number>number verb>number>unit
          verb>part>preposition verb>preposition>and verb>preposition>ing verb>unit>article verb>verb>pronoun
        `,
      ],
      [
        -0.25,
        `
          and>article>other and>contraction>article and>contraction>other and>number>preposition and>other>article
          and>other>preposition and>preposition>preposition and>verb>other and>verb>pronoun
          article>auxiliary>article article>kit>and article>kit>other article>manner>other
          article>manner>preposition article>number>because article>number>preposition article>number>verb
          article>other>and article>other>article article>other>because article>other>contraction article>other>ing
          article>other>kit article>other>manner article>other>never article>other>number article>other>opener
          article>other>pronoun article>other>unit article>part>and article>part>article article>part>auxiliary
          article>part>because article>part>contraction article>part>ing article>part>never article>part>number
          article>preposition>article article>preposition>preposition article>pronoun>other article>unit>number
          article>unit>preposition article>verb>manner auxiliary>article>ing auxiliary>article>preposition
          auxiliary>article>verb auxiliary>ing>preposition auxiliary>never>verb auxiliary>opener>and
          auxiliary>other>ing auxiliary>other>other auxiliary>other>pronoun auxiliary>part>other
          auxiliary>preposition>article auxiliary>preposition>other auxiliary>pronoun>other auxiliary>verb>other
          auxiliary>verb>pronoun because>article>auxiliary because>article>part because>contraction>article
          because>contraction>ing because>contraction>manner because>contraction>preposition because>manner>because
          because>other>other because>pronoun>verb because>verb>article contraction>article>other
          contraction>ing>preposition contraction>manner>other contraction>never>other contraction>opener>other
          contraction>other>article contraction>other>other contraction>other>preposition contraction>other>pronoun
          contraction>verb>article ing>and>verb ing>article>ing ing>article>manner ing>contraction>other
          ing>manner>article ing>manner>other ing>other>because ing>preposition>verb ing>pronoun>preposition
          ing>verb>number kit>and>other kit>and>preposition kit>auxiliary>other kit>number>part kit>number>unit
          kit>opener>preposition kit>other>and kit>other>manner kit>other>verb kit>part>preposition
          kit>preposition>and kit>preposition>article kit>unit>article kit>verb>opener manner>because>contraction
          manner>because>pronoun manner>contraction>article manner>kit>verb manner>manner>manner
          manner>manner>number manner>number>other manner>number>part manner>other>because manner>other>number
          manner>other>opener manner>part>opener manner>unit>preposition never>other>article
          never>other>preposition never>verb>other number>and>contraction number>article>part number>article>verb
          number>kit>verb number>manner>and number>manner>unit number>number>never number>opener>verb
          number>other>because number>other>unit number>part>number number>preposition>verb number>pronoun>verb
          number>unit>and number>unit>manner number>unit>unit number>unit>verb opener>and>manner opener>and>other
          opener>article>auxiliary opener>manner>because opener>number>unit opener>opener>article
          opener>other>because opener>other>kit opener>other>never opener>part>and opener>part>unit
          opener>preposition>article opener>preposition>because opener>preposition>number opener>preposition>other
          opener>pronoun>verb other>and>article other>and>manner other>article>ing other>article>kit
          other>article>preposition other>auxiliary>auxiliary other>auxiliary>opener other>auxiliary>verb
          other>because>article other>because>pronoun other>contraction>ing other>contraction>never
          other>contraction>other other>kit>and other>kit>because other>kit>contraction other>manner>contraction
          other>manner>never other>never>opener other>never>preposition other>number>article other>number>because
          other>number>opener other>number>preposition other>opener>end other>opener>kit other>opener>manner
          other>opener>preposition other>other>and other>part>article other>part>opener other>part>pronoun
          other>part>verb other>preposition>article other>preposition>kit other>preposition>pronoun
          other>pronoun>article other>pronoun>contraction other>unit>and other>unit>because other>unit>opener
          other>unit>preposition part>and>never part>and>verb part>article>manner part>auxiliary>ing
          part>because>pronoun part>contraction>ing part>contraction>other part>manner>opener part>manner>part
          part>never>other part>other>because part>other>ing part>preposition>because part>preposition>part
          part>unit>preposition part>verb>because part>verb>contraction part>verb>ing part>verb>preposition
          part>verb>verb preposition>and>verb preposition>article>ing preposition>article>kit
          preposition>article>other preposition>article>part preposition>article>preposition
          preposition>article>unit preposition>article>verb preposition>because>other preposition>because>pronoun
          preposition>contraction>never preposition>ing>article preposition>manner>never
          preposition>number>contraction preposition>number>other preposition>number>part preposition>part>because
          preposition>part>other preposition>part>part preposition>preposition>manner
          preposition>preposition>number preposition>preposition>pronoun preposition>pronoun>because
          preposition>pronoun>opener preposition>unit>contraction preposition>unit>other preposition>verb>kit
          preposition>verb>opener preposition>verb>verb pronoun>and>verb pronoun>article>opener
          pronoun>article>other pronoun>auxiliary>article pronoun>auxiliary>auxiliary pronoun>auxiliary>preposition
          pronoun>auxiliary>pronoun pronoun>contraction>never pronoun>manner>preposition pronoun>manner>verb
          pronoun>never>auxiliary pronoun>never>other pronoun>number>unit pronoun>other>article
          pronoun>other>contraction pronoun>other>verb pronoun>preposition>article pronoun>preposition>manner
          pronoun>preposition>other pronoun>verb>and pronoun>verb>contraction pronoun>verb>opener pronoun>verb>part
          pronoun>verb>preposition pronoun>verb>verb unit>and>article unit>and>because unit>and>number
          unit>article>part unit>article>preposition unit>because>manner unit>manner>and unit>other>number
          unit>other>unit unit>other>verb unit>preposition>number verb>and>article verb>article>auxiliary
          verb>article>other verb>because>pronoun verb>contraction>auxiliary verb>manner>number verb>manner>verb
          verb>opener>contraction verb>other>manner verb>other>number verb>part>because verb>part>verb
          verb>preposition>article verb>preposition>because verb>preposition>contraction verb>preposition>part
          verb>preposition>verb verb>pronoun>manner verb>pronoun>never verb>unit>because verb>verb>and
          verb>verb>other verb>verb>verb
        `,
      ],
      [
        -0.5,
        `
          and>pronoun>auxiliary and>pronoun>other and>verb>article and>verb>preposition article>and>other
          article>kit>preposition article>kit>verb article>number>other article>opener>number
          article>other>auxiliary article>other>other article>other>part article>other>preposition
          article>other>verb article>part>manner article>part>other article>part>part article>part>preposition
          article>part>verb article>verb>other auxiliary>article>other auxiliary>number>article
          auxiliary>number>unit because>article>other because>contraction>other because>pronoun>auxiliary
          because>pronoun>other ing>and>contraction ing>other>verb ing>preposition>article kit>and>verb
          kit>article>part kit>contraction>other kit>other>part kit>preposition>other manner>opener>other
          manner>preposition>article manner>preposition>other never>verb>preposition number>and>number
          number>other>and number>other>number number>preposition>article number>preposition>pronoun
          number>unit>article number>unit>preposition number>verb>and opener>opener>opener opener>opener>verb
          opener>other>and opener>verb>article other>and>other other>auxiliary>preposition other>number>auxiliary
          other>other>contraction other>other>verb other>preposition>contraction other>preposition>ing
          other>preposition>number other>preposition>verb other>pronoun>preposition part>and>article
          part>because>contraction part>manner>and part>manner>preposition part>opener>article part>other>opener
          part>other>verb part>preposition>and part>preposition>article part>preposition>verb part>verb>auxiliary
          preposition>and>preposition preposition>contraction>auxiliary preposition>manner>part
          preposition>number>and preposition>number>number preposition>opener>and preposition>other>and
          preposition>other>number preposition>other>preposition preposition>other>pronoun
          preposition>preposition>article preposition>pronoun>verb pronoun>auxiliary>other pronoun>opener>because
          pronoun>other>pronoun unit>and>verb unit>preposition>article unit>preposition>preposition
          verb>article>kit verb>article>part verb>because>other verb>contraction>number verb>manner>article
          verb>number>part verb>preposition>other verb>preposition>preposition verb>preposition>pronoun
          verb>pronoun>preposition
        `,
      ],
      [
        -0.75,
        `
          kit>because>article number>and>article number>and>pronoun number>number>number other>preposition>other
          part>and>part part>opener>preposition
        `,
      ],
    ],
    names: [
      [0.75, 'inside>no'],
      [0.5, 'no>first'],
      [0.25, 'first>first inside>first'],
      [-0.25, 'no>no'],
      [-1.25, 'first>inside inside>inside'],
    ],
    since: [
      [0.75, '12'],
      [0.5, '10 11'],
      [0.25, '7 8 9'],
      [-0.25, '3'],
      [-0.5, '2'],
      [-0.75, '1'],
    ],
    'since-class': [
      [0.75, '5>number 6>opener 7>contraction 7>opener 7>verb'],
      [0.5, '4>number 5>never 5>part 6>never 6>number 6>verb 7>never 7>number 7>pronoun'],
      [
        0.25,
        `
          1>and 2>verb 3>never 3>verb 4>opener 4>part 5>contraction 5>opener 5>verb 6>contraction 6>kit 6>unit
          7>and 7>article 7>because 7>manner 7>part
        `,
      ],
      [
        -0.25,
        `
          1>because 2>ly 2>other 2>pronoun 3>article 3>kit 3>other 4>and 4>ing 4>preposition 4>unit 5>and 5>because
          6>because 6>ing 6>ly 7>auxiliary
        `,
      ],
      [
        -0.5,
        `
          1>auxiliary 1>contraction 1>ly 1>never 1>number 1>preposition 2>article 2>auxiliary 2>because 2>ing
          2>number 2>opener 2>preposition 2>unit 3>and 3>auxiliary 3>preposition 4>because 4>manner 5>preposition
          6>and 6>auxiliary
        `,
      ],
      [-0.75, '1>article 1>ing 1>opener 1>other 1>pronoun 1>unit 1>verb 3>ing'],
      [-1, '1>manner 1>part'],
    ],
    first: [
      [1, 'part>number part>verb'],
      [
        0.75,
        `
          ing>verb kit>verb manner>number never>and never>number number>contraction number>never number>verb
          opener>contraction preposition>because unit>because
        `,
      ],
      [
        0.5,
        `
          auxiliary>auxiliary auxiliary>contraction contraction>part ing>article manner>and manner>ing
          manner>opener never>because never>opener number>and number>ly number>manner number>part number>pronoun
          opener>part other>opener part>contraction preposition>opener preposition>part unit>pronoun verb>number
        `,
      ],
      [
        0.25,
        `
          and>never and>opener and>part auxiliary>never contraction>and contraction>contraction contraction>opener
          ing>part kit>contraction kit>pronoun ly>article ly>other ly>verb manner>auxiliary manner>contraction
          manner>never manner>verb never>auxiliary never>unit number>article number>because opener>kit
          opener>opener opener>other opener>verb other>verb part>unit preposition>never pronoun>contraction
          pronoun>pronoun unit>and unit>never unit>verb verb>contraction verb>never verb>unit
        `,
      ],
      [
        -0.25,
        `
          and>article and>auxiliary and>ing and>ly and>preposition and>pronoun and>verb article>kit article>ly
          article>manner article>never article>number article>opener article>other article>preposition article>verb
          auxiliary>and auxiliary>other auxiliary>part because>article because>number contraction>other
          contraction>preposition contraction>verb ing>preposition ing>pronoun kit>kit kit>never manner>unit
          never>article never>ing number>auxiliary number>ing number>preposition opener>and opener>unit
          other>article other>manner other>part other>preposition part>ing part>other preposition>auxiliary
          preposition>other preposition>verb pronoun>never unit>opener unit>unit verb>article verb>auxiliary
          verb>pronoun
        `,
      ],
      [
        -0.5,
        `
          and>unit article>and article>auxiliary article>ing article>pronoun article>unit auxiliary>unit
          because>and because>ing because>kit because>manner because>unit contraction>article contraction>auxiliary
          contraction>because contraction>ing contraction>number contraction>pronoun contraction>unit ing>and
          kit>opener kit>other kit>preposition manner>part never>verb number>unit opener>article opener>because
          other>ing other>never part>article part>because part>preposition preposition>preposition
          preposition>pronoun pronoun>and pronoun>article pronoun>auxiliary pronoun>ing pronoun>other
          pronoun>preposition pronoun>verb unit>number unit>preposition verb>and verb>because verb>ing verb>ly
          verb>manner verb>part verb>preposition
        `,
      ],
      [
        -0.75,
        `
          because>auxiliary because>other because>preposition because>pronoun kit>article kit>because kit>part
          part>never pronoun>manner pronoun>number
        `,
      ],
      [-1, 'because>contraction because>never because>verb manner>because'],
    ],
    'first-word': [
      [1, 'evening good out where'],
      [0.75, "four lead move nearly no not racks shake sorry swap that'll welcome"],
      [
        0.5,
        `
          20 add almost anyway beautiful bird blow calves carry change chest cool done exhale fast fifteen got
          hamstrings hand he's heel hello hip hmm honestly how it'll lovely lunges never nine nobody notice onto
          opposite order over rows settle seven six slowly stay straight suitcase telly ten thanks that's they time
          tss twice water who whose years
        `,
      ],
      [
        0.25,
        `
          1 3 45 6 8 aim air ankling arabesque arm away belly bench bent brilliant bum by cat chin's clock's cut
          dead didn't doorway down drink eagle eight either everybody everyone except eyes fabulous farmer's
          feeling five's funny get go halfway haven't heal her hm how's humour inner isn't jean joyce lap long
          lower's marcus maureen mind muscle nah nice odds off other phones pickpockets pike presses pretty proud
          pulse pushups quick quit rack ratio relaxed ribs right righto romanian ron row screw shaking's shift
          shoulder sigh spread square strong sunshine switch tall that these they'll they're thighs three thumbs
          tidy tight till tops towards towel twisted two umbrella under unless who's work wring yeah
        `,
      ],
      [
        -0.25,
        `
          30 84 about adding an ankle b baby ball bar bicep body bow box brace bring bye chain chalk confident curl
          dizzy do door drive dumbbells eighty elbows everything feet first flat floor forearms forward give going
          grab great hands hard heals hike hop i'm imagine inhale instead isometric just knee kneecap knees lean
          leap leg legs less let let's lie look lose military more number oh okay on one pain partner people pins
          planks plates pull punch put receiver reds reverse roll round running safeties safety scoot see set she
          shoes shoulders simply sit sixes sixteen skip slower soak soles someone sore standing start stood surface
          takes tap ten's the they've thigh thirteen this tighten today toe toes top turn twas unlock warm water's
          we'll which whoever wide worth wrap wrists you'd
        `,
      ],
      [
        -0.5,
        `
          a actually anyone anything at back because before beginners bell bend bit chair come did draw face for
          hang he he'd heavier heels hold i'll i've ice it's jacks last left lift loop lower marged's moose nose
          once only or peel pick press prop push rate reach run shove shut skin slide somebody squash step straps
          sure swing there those tip today's tonight walk we we're we've what whoever's you you'll you've
        `,
      ],
      [
        -0.75,
        `
          after anybody bottom build float from front half i most some somebody's stand there's to we'd when with
          your
        `,
      ],
      [-1, 'if my next now'],
    ],
    after2: [
      [1, "against one's stays that'll"],
      [0.75, 'anything are asked breath eat lot lunges onto seven sure switch third took used'],
      [
        0.5,
        `
          19 85 again anybody arch as bench best boiler burpees bus calf clams clicked comes couple crossed doing
          drifting dull eighty everybody's fifth finding fluff forced forwards goes grandad hand hip's hops jug
          kicks knee know letting long looked looks loosen many marged might minute more neck normally pair park
          phone physio plan questions ra rained record red rowed rows rules sharp shoes should shouldn't showing
          sister slides stations stretch swinging taken takes teacher things through thrusts turning us was we were
          written yourself
        `,
      ],
      [
        0.25,
        `
          100 16 60 a1 across advanced always among around balcony bales bar's bars begin bent bird blades bless
          breaths brush bum's butt's button can cardigan careful chalk change cheer coached comfy coming cooked
          cooler crawl cross cut daughter distance dog done drift drinks ear easy edge else evenings evenly
          everybody everyone external facing fall faster fella flamingo flatten flop folks follows foot fours free
          friend gentle gets got grapevine grip gripping heard heart heating's heaviest heel hike home hooks hot
          hurry is jerking jumps kilo kneeling leap leg leg's literally lock looking lovely lunge lying makes march
          met mother number offs on option over paid pain pedal pigeon plank planned plonking point position post
          power prize progress proud push pushes quick ratio read reds relax repetitions rest rush sag sat say
          scale second seconds seeing shake short shrugging shut sits six sleeping slowly sore speed spine spread
          sprints squatting stacked start stay steps stick stops strokes strong supposed swings tables tailbone
          tall taller tap taps teaches those tilts tip today's touches track trouble turned turns two's uncle voice
          watched we've wee went where wherever whiteboard will would wrote yank
        `,
      ],
      [
        -0.25,
        `
          12 15 20 22 30 34 8 a above air along ankle answer arms ask asking at awake back balance be beat
          beautiful being belly below bit board bone bored bother bottom box bridges broke call came ceiling cheat
          cheating check child's cleans control couldn't days degrees did does door downs drag drop dropping ease
          eight eighteen empty euro even evening everywhere faces far feels fingers fingertips finished fists five
          fives flat flip float forearms forehead forget form forward gave give going good grab ground hair half
          hands happy he's help higher him his hold holding holds honestly hundred in inside instead jacks just
          kids knees land later lengths letter lie light like loads lovelies low lower make marching mean meant
          metres miles mine mine's moaning moved near necks nice night none nothing now o'clock open operated own
          panic parked past percent plates pointing pretend promise proper pump quiet quit rather real really
          relaxed ribs right ring rolling rolls saving says seat serious shame she's shoulder shout sigh single
          slide somebody sort split squats squeeze stack standing's steady sticks stood straighten swimming take
          talk thank that they've think thinking thought thousand thumbs tight time times today toe told tonight
          touch towards towel travel tuck tuesday twenty twists under until walk way welcome why width without
          wobble won yet you you're
        `,
      ],
      [
        -0.5,
        `
          and backs because behind between blow both breathe by chair chin come counting cushion do doesn't don't
          draw end every eyes floor front gone hard he head heels height her hips i i'll if it's its jump keep
          kilos landing length let morning my nine ninety no nobody's nose not ones or other pounds punch raise
          ready run see she side sides some somebody's sorry stand stop tell ten than then these this thursday till
          toes top twelve twice ups use watch we'll well what while with you'll
        `,
      ],
      [
        -0.75,
        `
          been before day elbows i'm i've isn't leave look minutes month nobody okay same so there they they're
          thirty too turn week year
        `,
      ],
    ],
    other: [
      [1.5, 'line'],
      [0.75, 'placed'],
      [0.5, 'may-open opens'],
      [-0.5, 'goes-on'],
    ],
    after: [
      [1.5, "somebody's"],
      [1.25, 'my oh same second thank'],
      [
        1,
        `
          anybody blow breathe good have let's lovely nice no nose nothing okay reds shake sigh squash then
        `,
      ],
      [
        0.75,
        `
          actually any anyone beginners big both bottom cardigans chest elbows empty grow hooks i'll if inner kneel
          knuckles long mine's proud save see settle short slow smooth somebody sorry swap switch ten we'll
          whoever's
        `,
      ],
      [
        0.5,
        `
          10 4 5 after almost anyway ask avoid banana before bell bow breath bye calves can't chat check chin's
          choose crush did do don't double drink eighteen elbow everything eyes faster feeling fifteen fingertips
          flip follow forearms front gloves great hamstrings handle he heavier heels hm hmm how i i'm ice imagine
          keep leave lengthen little look lose main mats maybe moose most muscle nearly nineteen nobody nobody's
          number option pain pedal pelvis pickpockets picture piece plates pop rate reset righto rings rolling
          safety shaky's she's shins shorten sip sit six skaters small so soft some splits stand ta tall thanks
          tingling tip top tummy twelve twenty unhurried whole wring wrist
        `,
      ],
      [
        0.25,
        `
          1 18 20 45 7 8 9 add aim another arms baby backs backside bad bands bar barre beautiful bench best blue
          blues bouncing bounds brace bring buckles build bum bum's bums busy butt cardigan careful carioca cat
          chain change cheerio chin chins clear clock's cobra collars confident crawl crease crisp cross dave
          deadlifts drawers duck ease excuse feel filing finish five flatten four full gather guard halfway halo
          hands hang hanging hay he'd he's heal heals heart here's hill hinge hollow how's it's joyce kneecap knees
          lamp lap last lats lazy leap less lie lively load loads loop loose loosen low mailbox marvellous mine
          mini minute minute's narrow neck necks never new noodle notice numbers only onto paddle phones pick
          pigeon pinch pins plank postman pretend progress puff quit race rack racks ratio ray red repeat safeties
          scoot seven shift shoes shoulders shove shrugging shuffle simply skin skip slam sleepy slower soles
          somewhere speed spend spice squats squeeze standing station steady sticks straighten straps sure take
          there's these third tiny tire today's trace try tuesday turf's twice twisted upper want water weights
          what while who's whose wrists you'd zip
        `,
      ],
      [
        -0.25,
        `
          'em 2 24 25 40 90 all alone along always and aren't asked asleep bang barbell bear been bells bend better
          bird bit board bones box breathing button calf call called calls came can circle class clean cleans
          closer cold coming completely counts curl curls dead deep dips dog done drift drop ear easier eat either
          else end evening ever except fall far favourite fine finished fives float fold forwards fours frame free
          further getting going gone got had hamstring heel held her hike himself his hold holds hops hot impact in
          isn't it'll job k kick kiss know late later left length lengths level lifts longer lunge lying machine
          make makes means mind money month moves need night ninety now o'clock on one's opening otherwise out over
          overhead pace pair paired per phone pigeons pocket pull pulled pushup put raise raised raises really
          reverse ring roll russian sag say sets she shoulder show sides sideways sink slide slides split sprints
          squish starts stay steps swing takes taller taps tea teach the through thursday time tires toe told too
          touches towards towel tuck turn two unless up upright us version wet whenever where who why wide widen
          wider width will without works would written wrong year years your
        `,
      ],
      [
        -0.5,
        `
          60 a an apart arm at away backwards behind bent between blades bone breaths by count day does doing door
          drive enough er every feels floor for get gets hard haven't head help higher hip hundred instead into it
          its knee leaves lift like line lot metres minutes more morning much not or park position press round
          rounds row says seat seconds shin since sort squat stays straight stretch stuff than that there they're
          thing things this times to tucked twist under until ups was way week weeks what's when which work yes yet
          you you're yourself
        `,
      ],
      [
        -0.75,
        `
          ahead are as but comes each fifty first foot go goes hand height here home is leg lets me next of one
          ones open slowly them today together with you've
        `,
      ],
      [-1, 'again because close forward please point presses till were'],
    ],
    'class-word': [
      [1.25, 'preposition>back'],
      [1, 'part>the'],
      [
        0.75,
        `
          and>both manner>if number>4 number>down number>so opener>rest other>do other>elbows other>have other>if
          other>rings other>same other>second other>you'll part>for part>knees part>your preposition>hold
          preposition>i preposition>it's preposition>then preposition>what pronoun>about verb>half verb>no
        `,
      ],
      [
        0.5,
        `
          article>and article>if article>knuckles article>um auxiliary>and because>stop ing>my ing>one kit>breathe
          kit>do kit>on manner>i manner>peel manner>two manner>when never>there number>have number>nice
          number>other number>round number>six number>ten number>then number>there's opener>if opener>keep
          opener>minute opener>nice opener>that's other>3 other>anyone other>anyway other>arms other>back
          other>between other>both other>eyes other>feet other>fifteen other>finish other>front other>good
          other>hands other>hug other>knees other>let's other>lie other>lovely other>my other>no other>okay
          other>other other>pop other>ready other>see other>shake other>shuffle other>so other>steady other>straps
          other>thank other>then other>there other>top other>um other>walk part>as part>good part>look part>reach
          part>tall part>ten part>then part>toes part>too preposition>bottom preposition>do preposition>don't
          preposition>done preposition>down preposition>going preposition>i'm preposition>if preposition>let
          preposition>lovely preposition>no preposition>off preposition>right preposition>second preposition>that's
          preposition>we'll preposition>when pronoun>good pronoun>right pronoun>two pronoun>you're unit>it
          unit>slow unit>step unit>to verb>do verb>flat verb>i verb>if verb>long verb>my verb>same verb>slow
          verb>that's verb>then
        `,
      ],
      [
        0.25,
        `
          and>in and>sit article>3 article>at article>next article>the article>water article>you auxiliary>don't
          auxiliary>down auxiliary>five auxiliary>hold auxiliary>is auxiliary>leave auxiliary>mine auxiliary>no
          auxiliary>okay auxiliary>straight because>go contraction>my ing>don't ing>if ing>you've kit>back kit>get
          kit>it's kit>let kit>no kit>side kit>the kit>then kit>to manner>about manner>above manner>come
          manner>don't manner>elbows manner>first manner>keep manner>leg manner>three manner>time number>2 number>3
          number>and number>breath number>i number>it number>knees number>last number>past number>right number>set
          number>seven number>squat number>stop number>take number>that's number>the number>twenty number>your
          opener>both opener>chest opener>come opener>elbows opener>find opener>first opener>four opener>hands
          opener>have opener>i opener>last opener>now opener>roll opener>sit opener>so opener>soft other>a
          other>after other>all other>anything other>baby other>backs other>before other>blow other>breath
          other>breathe other>bye other>carry other>cross other>don't other>double other>dumbbells other>elbow
          other>feel other>five other>forty other>give other>grab other>he other>heavy other>heel other>heels
          other>high other>hinge other>hips other>i've other>imagine other>jump other>last other>little
          other>lunges other>make other>minute other>nobody's other>nothing other>rows other>running other>sets
          other>six other>skip other>some other>somebody other>somebody's other>sore other>sorry other>stand
          other>standing other>start other>station other>through other>wait other>we'll other>you're part>big
          part>breathe part>chest part>four part>hands part>have part>hips part>it part>knee part>never part>okay
          part>pain part>press part>same part>sit part>slide part>take part>think part>thirty part>this part>twenty
          part>we'll preposition>2 preposition>3 preposition>5 preposition>add preposition>breathe
          preposition>eight preposition>feet preposition>fifteen preposition>hands preposition>hang
          preposition>lower preposition>pull preposition>quick preposition>some preposition>stop preposition>think
          pronoun>before pronoun>can't pronoun>hands pronoun>it pronoun>let pronoun>once pronoun>only pronoun>side
          pronoun>so pronoun>you pronoun>your unit>don't unit>go unit>no unit>the unit>two unit>while unit>your
          verb>another verb>bar verb>don't verb>from verb>it's verb>last verb>lift verb>ten verb>twenty
        `,
      ],
      [
        -0.25,
        `
          and>a and>don't and>heel and>if and>it's and>let and>no and>stand and>step and>the and>you article>a
          article>back article>bar article>before article>belly article>bench article>bit article>bottom
          article>chair article>chest article>first article>floor article>front article>good article>half
          article>hand article>head article>heel article>heels article>hips article>i article>in article>is
          article>knee article>last article>legs article>little article>minute article>morning article>neck
          article>no article>one article>other article>rest article>right article>rings article>second
          article>shoulder article>side article>time article>toes article>top article>wall article>whole
          auxiliary>reach auxiliary>stay auxiliary>ten auxiliary>three because>if because>it because>the
          because>well because>you've because>your contraction>a contraction>do contraction>done contraction>go
          contraction>got contraction>only contraction>the ing>about ing>at ing>down ing>for ing>is ing>it's
          ing>keep ing>this ing>you ing>your kit>at kit>hold kit>instead kit>is kit>next kit>round kit>row kit>so
          kit>that kit>under kit>up manner>3 manner>again manner>arms manner>down manner>fours manner>is manner>it
          manner>line manner>lower manner>much manner>now manner>of manner>one manner>set manner>six manner>so
          manner>step manner>up never>a number>as number>breaths number>counts number>each number>for number>hand
          number>hundred number>if number>is number>k number>keep number>knee number>long number>lots number>minute
          number>minutes number>o'clock number>or number>sets number>side number>steps number>thirty opener>and
          opener>as opener>back opener>door opener>for opener>good opener>home opener>it's opener>knees opener>leg
          opener>morning opener>put opener>round opener>shake opener>stuff opener>twenty opener>work other>apart
          other>asked other>by other>calf other>call other>calls other>chair other>chest other>coming other>curls
          other>does other>end other>face other>favourite other>fold other>four other>from other>get other>goes
          other>had other>hard other>in other>isn't other>leaves other>left other>legs other>level other>long
          other>moving other>not other>now other>on other>ones other>only other>pain other>pause other>point
          other>post other>put other>quick other>reach other>rest other>says other>squeeze other>stay other>stretch
          other>take other>that other>they other>they've other>this other>those other>toe other>together
          other>tonight other>too other>tuck other>twenty other>twice other>under other>was other>we're other>well
          other>who's part>an part>at part>back part>bend part>both part>button part>come part>down part>elbow
          part>find part>first part>five part>forward part>go part>half part>land part>last part>let part>open
          part>out part>point part>raise part>right part>sag part>slides part>so part>stays part>straight
          part>stretch part>that part>there part>together part>tucked part>turn part>walk part>wide preposition>a
          preposition>after preposition>all preposition>an preposition>and preposition>anybody preposition>arms
          preposition>bar preposition>before preposition>box preposition>each preposition>elbows preposition>find
          preposition>first preposition>get preposition>give preposition>hand preposition>have preposition>hips
          preposition>in preposition>now preposition>of preposition>past preposition>rest preposition>ring
          preposition>rounds preposition>slow preposition>squat preposition>straight preposition>swing
          preposition>tall preposition>them preposition>there preposition>through preposition>toe preposition>top
          preposition>um preposition>until preposition>with preposition>you'd preposition>you'll pronoun>a
          pronoun>all pronoun>bend pronoun>breathe pronoun>came pronoun>can pronoun>come pronoun>do pronoun>down
          pronoun>else pronoun>feet pronoun>harder pronoun>have pronoun>know pronoun>put pronoun>see pronoun>sit
          pronoun>skip pronoun>there pronoun>up pronoun>want unit>as unit>down unit>four unit>here unit>left
          unit>or unit>round unit>so unit>there unit>this unit>three unit>through unit>toe unit>you're verb>2
          verb>and verb>at verb>body verb>feet verb>for verb>forward verb>hands verb>hold verb>in verb>legs
          verb>light verb>of verb>off verb>out verb>pull verb>put verb>round verb>some verb>there's verb>this
          verb>to verb>tuck verb>up verb>weight verb>with verb>you'll verb>your verb>yourself
        `,
      ],
      [
        -0.5,
        `
          and>i and>then article>feet article>hands article>knees article>leg article>sit auxiliary>a
          auxiliary>done auxiliary>it auxiliary>keep auxiliary>not auxiliary>sit auxiliary>to because>i
          because>it's because>you because>you're contraction>not ing>a ing>it ing>on kit>and kit>just kit>press
          kit>sit manner>and manner>as manner>for never>let number>five number>foot number>i'd number>leg
          number>metres number>more number>nine number>now number>of number>seconds number>slow number>times
          number>to number>weeks opener>do opener>go opener>lovely opener>week other>4 other>about other>again
          other>are other>arm other>at other>away other>because other>each other>every other>foot other>forward
          other>got other>half other>how other>it other>leg other>lift other>next other>once other>one other>or
          other>please other>slide other>squat other>stick other>than other>them other>to other>today other>towel
          other>way other>were other>what other>while other>with part>a part>are part>blades part>don't part>elbows
          part>flat part>goes part>hang part>height part>is part>on part>roll part>soft part>stay part>when
          preposition>again preposition>as preposition>between preposition>here preposition>is preposition>please
          preposition>slowly preposition>the preposition>till preposition>to preposition>you preposition>you're
          preposition>you've preposition>your pronoun>don't pronoun>get pronoun>out unit>each unit>of unit>rest
          unit>that's unit>you verb>a verb>as verb>back verb>five verb>it verb>lower verb>the verb>them verb>there
          verb>ups verb>you
        `,
      ],
      [
        -0.75,
        `
          manner>knees manner>right other>come other>knee other>me other>of other>stop other>when part>and
          preposition>it preposition>one preposition>two pronoun>go verb>one
        `,
      ],
    ],
    'class-ahead': [
      [
        0.75,
        `
          kit>you kit>you've number>as number>your opener>first opener>you other>knee other>those other>want
          part>for part>of pronoun>of pronoun>six unit>out
        `,
      ],
      [
        0.5,
        `
          and>away article>get article>what auxiliary>go auxiliary>is auxiliary>leg auxiliary>now ing>i ing>no
          ing>on ing>push kit>where manner>all manner>done manner>down manner>it manner>little manner>of manner>off
          manner>one manner>twenty manner>up number>are number>can number>good number>it number>lovely number>out
          number>step number>the number>to opener>knees opener>off opener>on opener>one opener>round opener>with
          other>3 other>5 other>about other>any other>anybody other>are other>between other>big other>breath
          other>breaths other>comes other>couple other>down other>facing other>finish other>foot other>goes
          other>got other>hand other>how other>in other>last other>looking other>lunges other>minute other>on
          other>over other>pair other>quick other>rolled other>rows other>seconds other>seven other>shake
          other>takes other>that other>time other>up other>walk other>you're part>a part>again part>five part>it
          part>roll part>two preposition>body preposition>calf preposition>can preposition>done preposition>eighty
          preposition>finish preposition>goes preposition>is preposition>push preposition>quick preposition>rest
          preposition>take pronoun>knee pronoun>walk unit>fifteen unit>your verb>here verb>it verb>on verb>six
          verb>start verb>them
        `,
      ],
      [
        0.25,
        `
          and>as and>knees and>of and>two article>bent article>hands article>home article>legs article>lot
          article>minute article>rounds article>second article>thirty article>two article>was article>week
          article>your auxiliary>a auxiliary>at auxiliary>hand auxiliary>have auxiliary>just auxiliary>long
          auxiliary>not auxiliary>on auxiliary>six auxiliary>through ing>3 ing>like ing>of ing>or ing>out ing>that
          ing>that's kit>against kit>as kit>do kit>on kit>press kit>step kit>the ly>the manner>and manner>at
          manner>build manner>each manner>far manner>hand manner>if manner>leg manner>no manner>pull manner>right
          manner>seconds manner>stay manner>tall manner>to manner>two manner>well never>that never>you number>2
          number>3 number>again number>away number>back number>have number>in number>let number>push number>rounds
          number>stand number>stay number>straight number>there's number>through number>time number>times
          number>turn number>up opener>hands opener>it's opener>long opener>low opener>rest opener>second
          opener>slow opener>we other>all other>arm other>as other>bars other>bell other>bent other>bring
          other>change other>eight other>eighty other>everybody other>forty other>go other>has other>home other>is
          other>it other>it's other>legs other>less other>level other>line other>make other>march other>me other>my
          other>one other>people other>round other>say other>set other>should other>side other>slow other>slowly
          other>soft other>something other>spine other>stay other>step other>steps other>still other>sure
          other>swinging other>swings other>them other>think other>three other>together other>way other>we
          other>when other>work other>would other>wrists other>yourself part>are part>feet part>go part>going
          part>leg part>my part>only part>onto part>plank part>seconds part>step part>straight part>stretch
          part>switch part>take part>that's part>three part>together part>we preposition>as preposition>be
          preposition>bench preposition>bum preposition>did preposition>eight preposition>face preposition>for
          preposition>four preposition>full preposition>going preposition>heavy preposition>heel
          preposition>holding preposition>home preposition>instead preposition>last preposition>more
          preposition>not preposition>number preposition>of preposition>off preposition>on preposition>one
          preposition>pain preposition>physio preposition>pull preposition>reach preposition>roll preposition>sets
          preposition>seven preposition>sitting preposition>stretch preposition>there preposition>these
          preposition>times preposition>years preposition>you're pronoun>an pronoun>at pronoun>down pronoun>had
          pronoun>keep pronoun>know pronoun>long pronoun>put pronoun>seconds pronoun>shoulders pronoun>to
          pronoun>your unit>after unit>as unit>go unit>half unit>one unit>that's unit>the unit>we verb>arms verb>at
          verb>coming verb>don't verb>dumbbell verb>feel verb>good verb>hold verb>i've verb>in verb>little
          verb>next verb>off verb>one verb>over verb>press verb>sit verb>slowly verb>that verb>times verb>together
          verb>two verb>want verb>was verb>whole verb>your
        `,
      ],
      [
        -0.25,
        `
          and>and and>back and>down and>on and>out and>up article>2 article>again article>and article>as article>at
          article>back article>can article>feet article>five article>for article>i article>if article>in article>is
          article>it's article>leg article>off article>or article>rows article>that article>that's article>three
          article>times article>to article>up article>want article>we article>with auxiliary>don't auxiliary>down
          auxiliary>for auxiliary>out auxiliary>that auxiliary>the auxiliary>up because>a because>are because>is
          because>the because>your contraction>a contraction>and contraction>it contraction>the contraction>to
          ing>can ing>do ing>down ing>the ing>them kit>a kit>and kit>if kit>let kit>pull kit>that kit>up kit>you're
          kit>your ly>you manner>go manner>hold manner>i've manner>is manner>make manner>only manner>rest
          manner>slow manner>steps manner>than manner>this manner>way manner>with never>it number>and number>at
          number>breaths number>call number>five number>going number>hips number>i'm number>line number>minutes
          number>nice number>no number>not number>of number>press number>right number>second number>seven
          number>side number>six number>strokes number>take number>that number>those number>twelve number>twenty
          number>walk opener>each opener>end opener>far opener>find opener>going opener>in opener>just opener>make
          opener>now opener>same opener>sit opener>there opener>to other>6 other>above other>after other>and
          other>because other>bench other>bend other>body other>both other>breathe other>carry other>count
          other>did other>doesn't other>door other>every other>far other>feels other>floor other>good other>hanging
          other>have other>heavy other>here other>higher other>his other>i'd other>i'll other>i'm other>left
          other>low other>morning other>neck other>need other>never other>not other>of other>own other>pressure
          other>pull other>reach other>ready other>same other>seen other>sitting other>six other>so other>somebody
          other>sorry other>straight other>stretch other>strides other>ten other>than other>that's other>these
          other>thirty other>till other>too other>two other>um other>well other>wet other>what other>without
          other>wobble other>year other>you've part>at part>do part>don't part>flat part>forward part>hands
          part>heel part>higher part>hold part>i part>if part>inch part>knees part>level part>lie part>little
          part>long part>no part>off part>pull part>round part>shoulders part>ten part>then part>to part>tucked
          part>you've preposition>about preposition>arms preposition>bent preposition>breathe preposition>eyes
          preposition>feet preposition>first preposition>floor preposition>front preposition>good preposition>got
          preposition>had preposition>high preposition>hips preposition>if preposition>it's preposition>just
          preposition>lean preposition>legs preposition>let preposition>like preposition>lot preposition>mean
          preposition>minutes preposition>no preposition>or preposition>out preposition>over preposition>rounds
          preposition>shoulders preposition>so preposition>stop preposition>swap preposition>think preposition>toes
          preposition>twenty preposition>two preposition>wall preposition>we're preposition>with pronoun>3
          pronoun>home pronoun>my pronoun>nice pronoun>no pronoun>out pronoun>see pronoun>take pronoun>this
          pronoun>till pronoun>time pronoun>whole unit>at unit>between unit>did unit>don't unit>i unit>of unit>on
          unit>set unit>side unit>six unit>so unit>them verb>3 verb>again verb>arm verb>be verb>bell verb>between
          verb>breath verb>by verb>call verb>dumbbells verb>get verb>going verb>heel verb>it's verb>lie verb>no
          verb>or verb>out verb>straight verb>use verb>we verb>when
        `,
      ],
      [
        -0.5,
        `
          and>a and>it and>the and>your article>knee article>of article>on article>one article>the auxiliary>and
          auxiliary>two auxiliary>you because>as because>was ing>so kit>back manner>are manner>i manner>in
          manner>you're number>for number>it's number>leg number>ones number>then number>this opener>as
          opener>eight opener>go opener>time other>close other>give other>heel other>her other>i've other>if
          other>okay other>punch other>push other>right other>sets other>some other>somebody's other>there
          other>they other>week other>won't part>away part>down part>not part>other part>the part>want
          preposition>hands preposition>height preposition>it preposition>long preposition>want preposition>you
          pronoun>knees pronoun>then pronoun>times pronoun>you unit>and unit>day unit>first unit>if unit>round
          unit>that verb>for verb>if verb>knee verb>you're
        `,
      ],
      [-0.75, 'other>keep other>like preposition>and unit>week'],
    ],
    'word-class': [
      [1, 'back>number behind>verb done>other in>pronoun on>manner up>number up>other'],
      [
        0.75,
        `
          again>verb arch>other away>part back>article back>verb bell>verb bit>verb down>number down>other
          eight>other feet>other go>verb is>and it>verb off>other one>number one>other other>verb out>other
          press>verb rest>other round>other squats>preposition that>and then>part three>article time>number
          up>article up>part
        `,
      ],
      [
        0.5,
        `
          1>other 3>number again>article again>preposition are>auxiliary are>unit are>verb away>article back>other
          behind>other bent>verb between>because bottom>because breathe>and breathe>because breathe>number
          breaths>opener chair>verb curls>part done>opener down>article down>kit down>part down>verb each>article
          ears>other eight>verb elbows>other feel>preposition feet>and fine>and first>preposition five>preposition
          flat>verb floor>opener four>because go>contraction go>part go>pronoun goes>article goes>kit going>other
          going>verb good>and good>preposition good>pronoun hand>article hand>verb hands>other hard>other
          heavy>number heel>part heels>other hold>preposition in>part inch>verb it>and it>contraction it>kit
          it>opener it>part know>other lean>article left>number legs>verb like>verb line>verb lot>other
          lovely>preposition me>pronoun middle>other middle>preposition more>and more>manner morning>other
          next>part now>other okay>because on>preposition once>pronoun one>opener one>preposition one>verb
          ones>other other>article other>contraction out>article out>number please>other presses>other pull>because
          quiet>other rest>manner rounds>and rows>preposition set>number side>article side>part sides>preposition
          sitting>other slow>part slowly>number stand>contraction straight>because stretch>number ten>because
          ten>number that>contraction that>number that>opener them>pronoun there>opener there>other
          there>preposition these>verb thing>other this>manner those>article to>because today>other together>manner
          top>pronoun two>pronoun two>verb up>verb way>number well>article width>and won't>other you>number
        `,
      ],
      [
        0.25,
        `
          'em>other 10>unit 1>number again>other air>other all>contraction all>other ankle>preposition arms>and
          away>manner away>number back>pronoun back>unit bar>other bar>verb between>other between>verb both>other
          bottom>verb box>and breath>and breathe>other breathing>other bum>verb can>preposition chair>other
          chest>part chin>other close>article day>contraction did>article do>other do>verb don't>preposition
          drive>other drop>preposition each>and eight>number end>other everyone>preposition fifteen>number
          fifteen>other fine>article fine>verb floor>because floor>contraction forward>manner four>contraction
          four>number four>opener go>never go>number good>verb grass>preposition hands>number hang>verb
          hanging>preposition head>and heavy>because heavy>other heavy>part heels>number height>verb here>and
          here>other hip>verb hips>preposition hold>because hold>manner home>pronoun i>opener in>and in>because
          in>opener in>preposition in>verb inch>preposition is>verb it>article it>number it>other it>pronoun
          jump>article knee>verb knees>verb leaves>preposition left>preposition leg>article leg>auxiliary
          leg>because leg>never leg>other leg>part lift>number lifts>number little>verb long>number long>verb
          lot>preposition lovely>and low>and low>because lunges>opener mat>other mat>verb metres>number
          more>article more>other neck>verb no>other now>opener of>kit off>and off>auxiliary off>number off>opener
          okay>other on>and on>opener only>opener open>article out>contraction out>pronoun out>verb
          over>preposition over>verb pair>article pair>preposition plank>other plank>verb please>article
          pop>pronoun press>manner pull>article push>number push>other raises>preposition raises>verb reach>article
          rest>opener rest>pronoun right>contraction right>verb rock>preposition round>verb rounds>preposition
          row>other row>verb rows>other seconds>number seconds>verb sets>contraction shin>other shoulder>verb
          side>auxiliary side>preposition sip>preposition sit>contraction sitting>preposition six>and six>article
          six>number six>verb skaters>other slow>unit soft>other soft>verb speed>preposition squats>part stand>and
          stop>pronoun straighten>number stretch>because strides>number swap>verb swing>preposition
          talking>preposition tall>verb that>part that>verb them>article them>because them>other then>opener
          then>other there>number there>part these>other thighs>other thighs>verb this>article this>verb
          those>number three>because three>contraction three>pronoun through>and time>and time>preposition
          time>verb times>article times>verb today>and today>pronoun toe>because toes>number toes>other top>verb
          twelve>and twenty>and two>auxiliary two>preposition ups>other ups>part wall>other wall>preposition
          want>other water>other way>opener way>other week>and week>opener weight>auxiliary weights>other
          well>contraction wide>part work>other working>article you>because you>part you>unit
        `,
      ],
      [
        -0.25,
        `
          10>other 3>unit 4>and 5>and a>ing a>part a>unit about>article about>number after>article again>because
          all>number all>opener always>verb an>other and>auxiliary and>because and>manner and>never and>preposition
          anybody>other anything>other are>ing are>number arms>ly arms>number as>article as>contraction as>manner
          as>pronoun asked>other at>part baby>other back>part bad>part before>other behind>pronoun bell>other
          belly>verb belt>other bench>other bench>verb bent>other between>number big>other bird>other
          bit>preposition body>other breaths>article by>article called>article can't>verb chair>part chest>and
          chin>part coat>other comes>preposition coming>preposition cross>number cushion>preposition day>because
          dead>manner dead>other do>article do>part doesn't>verb don't>auxiliary down>and each>part even>because
          fall>preposition far>because feel>article feel>other feels>other feet>article feet>verb few>other
          fifty>number first>because first>number five>contraction five>unit flat>other flat>preposition
          floor>number floor>preposition folded>kit foot>number foot>other for>article for>opener four>unit
          fours>verb from>article from>part front>and front>part get>number gets>other go>because go>ly goes>manner
          goes>preposition gone>manner good>number good>part hand>manner hand>other have>article haven't>other
          head>opener head>other head>verb hear>article heel>other heels>preposition height>other help>pronoun
          higher>preposition hips>manner hips>part hold>article hold>number hold>pronoun holding>article home>and
          how>manner i've>other i>auxiliary i>never i>verb if>article inner>part into>article is>article is>manner
          is>opener it's>article it's>manner it's>number it's>other it>unit just>other keep>article knee>article
          knee>contraction knee>other knees>and lean>preposition leave>article left>article leg>ing leg>preposition
          legs>manner let>other letter>other lift>other light>part like>other like>pronoun little>kit little>other
          long>kit long>part look>preposition lower>part make>other mat>because mat>contraction me>verb middle>part
          minute>and minute>preposition minute>verb minutes>and minutes>because minutes>opener more>because
          more>number morning>pronoun morning>verb my>other nearly>other need>other next>preposition nice>and
          ninety>number no>contraction no>ing nobody's>ing nobody's>other nobody>other not>ing not>other
          not>preposition not>verb now>because now>contraction number>number of>part of>verb oh>contraction
          old>other on>article on>number on>pronoun one>and one>auxiliary one>because one>manner only>other
          only>verb operated>part other>other out>preposition out>unit over>article own>part people>verb
          piece>number please>pronoun press>and put>article put>number quick>and quiet>part real>other
          rest>auxiliary ribs>other ribs>verb ring>other roll>preposition round>and row>number rows>number
          said>number said>pronoun same>other same>verb say>number second>number second>other second>part
          second>verb seconds>article see>because see>contraction set>preposition sets>preposition shake>article
          sharp>other should>verb shoulders>other side>and side>other skip>article slow>manner slow>preposition
          small>and so>article so>contraction so>other so>verb somebody's>other something>other sore>verb squat>and
          squat>verb squats>article squats>opener squeeze>article standing>manner static>part stay>other
          stays>manner steady>verb step>number step>preposition stick>article still>other stretch>preposition
          swap>part tall>and tea>other tell>pronoun ten>unit than>pronoun thank>pronoun that's>article that's>other
          that>auxiliary that>kit that>preposition the>ing the>manner the>preposition the>unit them>and
          them>auxiliary them>verb then>number then>verb there's>article there>and these>and they>never third>other
          this>because those>auxiliary those>verb through>other till>contraction time>pronoun times>and
          today>contraction today>verb toe>preposition toes>manner together>and too>manner top>and touch>article
          towards>article twenty>number twenty>preposition two>and um>other up>because up>preposition us>verb
          very>opener walk>preposition wall>article wall>verb want>pronoun warm>preposition was>number way>pronoun
          we>auxiliary we>opener wee>other week>pronoun weight>preposition weights>verb welcome>preposition
          when>contraction when>pronoun where>contraction where>pronoun while>contraction while>pronoun whole>other
          whole>part with>article won't>verb work>and work>number yet>verb you're>ing you've>other your>kit
          your>number your>opener your>preposition your>unit your>verb yourself>preposition
        `,
      ],
      [
        -0.5,
        `
          3>other a>kit a>manner a>number a>opener a>other all>article all>pronoun and>and and>article and>number
          and>opener and>other and>part and>pronoun are>other arm>other arms>verb at>article at>number at>other
          away>and away>preposition away>verb back>and back>preposition bent>part between>article big>part
          blow>preposition both>part bottom>part breath>preposition breathe>preposition bus>verb can>auxiliary
          can>verb cat>other change>part chest>other come>preposition curls>and do>number doing>article
          doing>number don't>other don't>verb done>verb down>manner down>preposition each>other easy>opener
          eight>article eighty>number elbows>verb empty>kit ever>other feet>manner feet>part feet>preposition
          fine>because first>other floor>and for>other forty>number forward>and four>other get>other go>opener
          goes>other going>preposition got>article got>number got>other half>article hand>because hang>preposition
          heavy>verb heels>verb here>contraction here>number hips>never hips>other hollow>verb hundred>and
          if>contraction if>pronoun in>article is>other it>preposition keep>verb knees>because knees>never
          know>contraction lane>number last>other left>part leg>contraction leg>number leg>pronoun legs>because
          let>opener lovely>other middle>contraction minute>number more>unit nose>and of>article of>other
          of>pronoun opposite>part other>number over>part plank>part please>never pretend>contraction rest>number
          rest>preposition right>part round>article say>opener seconds>preposition see>article shoulders>verb
          soft>part squats>and stand>because stand>preposition stop>and straight>preposition ten>manner the>article
          the>kit the>number the>opener the>other the>part there>auxiliary there>because there>contraction
          there>pronoun thigh>other thighs>because three>and three>unit time>because time>contraction to>auxiliary
          to>number to>opener top>part two>part up>manner we>verb what>contraction whenever>contraction
          wherever>pronoun why>contraction with>part yes>contraction you>and you>auxiliary you>opener you>verb
          your>other your>part
        `,
      ],
      [
        -0.75,
        `
          a>verb and>contraction and>verb before>pronoun feels>opener go>preposition hip>other last>number
          like>contraction lot>verb now>verb of>number off>article one>part out>because out>manner shoulder>part
          straight>part switch>part take>number the>verb to>other way>preposition week>number what>pronoun
        `,
      ],
      [-1, 'for>number good>other just>verb other>part'],
      [-1.25, 'to>verb'],
    ],
    ahead: [
      [1.25, "and>that's have>a in>as off>you out>as"],
      [
        1,
        `
          and>off and>park and>six back>knee blow>out do>not flat>back on>your one>hand over>to see>you so>this
          thank>you thirty>seconds up>for
        `,
      ],
      [
        0.75,
        `
          a>march and>swap and>switch and>the and>when back>foot back>to breath>in breath>out breathe>out come>on
          do>them down>now find>a five>four front>knee half>a hang>on here>we i>used if>your in>for in>on
          in>through is>that it>is keep>hold leave>the lift>one now>the off>last one>two other>side out>on
          push>through round>two set>the shake>your shoulders>down side>on some>of somebody>asked stay>for step>one
          then>you to>make top>leg while>you're you>only
        `,
      ],
      [
        0.5,
        `
          a>minute a>whole after>that all>fours and>3 and>again and>breathe and>don't and>done and>down and>go
          and>if and>last and>rest and>rows and>twenty and>walk and>we're arms>up as>high as>many ask>me
          back>against back>flat back>of big>breath both>feet both>knees breathe>into bring>the can't>get chest>up
          clear>the crease>of cushion>under don't>arch don't>lean don't>let don't>tip down>two eight>each
          elbow>under empty>bar eyes>up feet>hip fingertips>on five>and five>each five>if five>times for>my
          for>those four>five from>here go>on good>good half>way here's>the hips>stay hold>for hold>it i've>been
          i>did i>had i>like if>a if>anything if>it's if>that if>you if>you've in>two it's>like it's>the it>comes
          just>lift keep>it knees>bent knees>down lean>your leg>out leg>swings legs>long lift>your long>neck
          look>at lovely>and low>back make>sure my>sister next>up nice>and nine>ten no>swinging nose>over off>and
          oh>that's or>just out>two press>it pull>it pull>your put>them rings>at same>again see>if seven>and
          seven>eight sharp>pain shoulder>blades slow>on slow>slow so>that's soft>knees stand>tall stay>as
          step>back straighten>one swap>over take>one ten>more ten>to that's>it that's>one that's>us that>is
          the>ear the>next the>pair the>plan the>third then>a then>it's then>straight there>and there>was there>we
          these>are thirty>metres this>is through>both to>end to>finish tuck>the twenty>to up>and up>like up>onto
          up>you walk>it want>more we'll>do we're>not we>begin weight>in weight>over whole>foot you'll>feel
          you're>a you're>leaning you've>got you>don't you>know you>might you>should you>will your>bum
        `,
      ],
      [
        0.25,
        `
          10>of 30>seconds 3>rounds 45>seconds 8>and 9>10 a>belt a>calf a>foot a>friend a>long a>muscle a>plate
          a>rolled a>shoulder about>forty across>the add>a again>if all>the and>change and>eight and>feel and>no
          and>put and>roll and>shake and>sit and>stop and>ten and>up ball>of band>round bar>in before>we
          belly>button bench>press bend>the both>hands both>legs bottom>knee breathe>and breathe>don't breathe>in
          can>you coming>back couple>of cross>your do>ten do>your don't>be don't>bounce don't>throw don't>yank
          down>as down>slow down>slowly drive>the dumbbell>in ease>off eight>and eighteen>nineteen elbows>are
          elbows>under every>minute every>rep face>the feel>it feel>your feet>a fifteen>then finish>with fists>or
          five>breaths for>anybody forearms>on four>sets four>times from>there front>edge give>me give>yourself
          go>again go>down go>go go>home goblet>squat good>and got>a got>it grip>the hands>under hang>out hate>it
          have>some head>and heel>and hinge>forward hips>and hips>don't hold>the i'd>like i'll>show i'm>not
          i've>got i>once i>won't if>it in>you instead>of is>it it's>a it's>called it's>three it>wants just>the
          keep>both keep>breathing keep>going knee>over lamp>post last>but last>one last>thing lean>on legs>and
          legs>in let>me let>us lie>back lie>down long>step lower>it lower>the mini>squats near>hand no>burpees
          not>doing one>arm one>breath one>down one>weight only>as onto>the onto>your opposite>arm other>leg
          out>breath outside>leg people>call pick>a pop>the press>them press>through push>off push>up quiet>feet
          reach>one rest>in rest>the ribs>down ring>rows roll>over second>go second>one second>time shake>out
          shoulders>are side>leg side>plank sit>tall sit>your six>to skin>the slide>the slide>your slow>and
          small>and so>it's some>people squat>jumps squeeze>it stand>on step>it stop>if stop>when straight>into
          straight>line sure>the swing>the take>hold take>three tall>and tall>on ten>and that's>the that>back
          the>ball the>bench the>bend the>best the>bus the>chest the>clean the>heel the>leg the>long the>number
          the>rest the>row the>sheet then>push then>sit then>the then>we then>your there>is think>about think>of
          this>one's three>four three>seconds three>sets three>two toes>down turn>your twelve>and twenty>on
          two>minutes two>rounds two>sets two>to up>quick up>up warm>up watch>the we'll>go we>were well>done when>i
          you'd>be you'll>want you're>looking you>can you>go you>want your>arms your>head's your>lower your>neck
          your>shoulders
        `,
      ],
      [
        -0.25,
        `
          3>sets 5>and a>pair a>week about>it after>each and>close and>drive and>four and>it and>lean and>look
          and>lower and>she's and>stand and>stay and>twelve and>you'll any>of arms>and arms>straight as>it as>the
          as>your back>and back>down back>up behind>you bring>it by>the by>your chest>and chest>height close>to
          comes>the don't>jump don't>like don't>look don't>want done>up down>if eight>don't elbows>back even>if
          every>time find>the first>two flat>on for>it forty>five front>squats go>back go>one go>out got>your
          half>of hands>and hands>off hands>over hands>up heel>to here>is hike>it hip>width how>you i>mean
          i>thought in>a in>between in>front into>the isn't>it it's>not it's>only it's>too it>and it>doesn't
          it>down it>out it>up keep>that knee>down knee>raises knees>under knees>up last>week lean>forward leave>it
          left>and leg>only legs>are legs>if legs>out legs>up level>with lift>the look>down mind>the ninety>seconds
          no>it's no>more no>shame no>weight not>a not>on now>i of>them of>those of>you on>a on>each on>one
          one>foot one>knee one>leg one>side one>the one>way or>a or>so or>your out>through out>to over>the
          put>your quick>feet reach>the right>arm right>into roll>out roll>to sat>on side>to sit>to six>and
          skip>the slide>down slide>up slow>breaths slow>don't snap>the so>be so>don't so>it so>you're stand>and
          stay>down stay>up stays>on stop>and straight>up swap>at take>your tell>me ten>minutes that's>how
          that's>where that>knee the>floor the>front the>hips the>knees the>legs the>middle the>same the>shoulder
          the>top the>wall the>way them>on then>back then>switch there's>no this>morning this>one three>to till>the
          to>go to>you touches>your twenty>five twice>as two>and two>hundred under>the under>your up>as up>first
          up>then up>there way>up we'll>leave we>are weight>on when>you're you're>going you're>on you're>ready
          you've>a you've>done you've>gone you>come you>could you>did you>get you>had your>breath your>feet
          your>head your>legs your>thighs your>toes
        `,
      ],
      [
        -0.5,
        `
          3>times a>day a>side and>bring and>do and>get and>he and>hold and>i and>i'll and>i'm and>i've and>it's
          and>just and>not and>take and>two and>you as>a as>well at>the bar>on bring>a come>back each>leg each>side
          five>minutes five>more five>seconds go>and hand>on head>on hold>of i>say i>want if>you're in>the is>a
          is>the it's>on just>under keep>them let>you lets>you make>a next>to no>further no>higher no>rest of>it
          of>the of>your off>the on>it one>and over>your push>it right>down roll>back round>the same>thing sort>of
          split>squats ten>seconds that's>been that's>fine the>other then>swap three>times to>the to>your turn>the
          two>one we're>on we>go when>you've with>a with>the with>your you>are
        `,
      ],
      [-0.75, 'and>a now>and out>of push>ups so>your the>whole we>do'],
    ],
    behind: [
      [1.25, 'up>up you>like'],
      [1, "and>five and>knees and>off as>well big>toe i>won't of>these of>those will>do"],
      [
        0.75,
        `
          a>side and>rest back>in back>out back>up for>this in>between is>not it>in leg>long let>go need>to
          nine>ten on>them one>up other>way thank>you walk>back way>up whole>foot you>pull you>push your>front
          your>lot
        `,
      ],
      [
        0.5,
        `
          a>march a>moment and>down and>go and>hold and>right and>six and>switch and>ten and>walk behind>you
          both>feet bus>stop carry>on chest>proud comes>in don't>jump each>leg evening>all every>rep five>six
          for>three for>two four>five from>it front>heel go>again go>one goblet>squat hang>on have>to high>knees
          hollow>hold i>know if>that in>it it>back it>goes it>harder it>out it>smaller join>in just>you keep>going
          last>one lean>in let>you lower>it minute>between no>more on>back on>you one>down one>go or>so other>arm
          park>it push>back quiet>feet second>set sit>up six>seven soft>knees some>water stand>up step>away
          stop>there straight>ahead tell>me that'll>do that's>all that's>it that's>one that's>us that>twice
          the>arms the>board the>bottom the>chest the>fence the>fingers the>ground the>left the>mat the>sofa
          the>top there>for this>one three>four three>seconds times>through to>finish to>stand to>this to>you
          too>high two>minutes two>one two>rounds under>you up>again up>quick wet>leaves whole>time you're>ready
          you've>not you>are you>want your>pockets your>tailbone
        `,
      ],
      [
        0.25,
        `
          9>10 a>band a>beat a>bridge a>cat a>hundred a>lap a>leg a>race a>spaniel a>strap a>string a>towel
          a>weight an>inch and>again and>back and>drive and>hang and>lean and>twenty and>up anybody>asks arms>out
          as>many at>all at>it back>down back>knee begin>with bottom>stair came>in chest>up child's>pose come>back
          come>up coming>up dead>bug do>ten do>two don't>arch don't>reach done>up down>one down>slowly down>then
          each>other each>time each>way end>evening feet>up fifteen>seconds five>degrees five>times flat>back
          for>four for>it four>breaths front>leg go>back go>completely going>down good>leg got>it half>way
          hands>out heel>down hip>width hold>it i>am i>like i>promised i>see in>front in>there in>you is>plenty
          it>off knee>raises knee>up knees>bent knees>out lamp>post last>round leave>this leg>raise light>pair
          like>that like>this little>breaths minutes>rest mountain>climbers need>it next>week no>bouncing no>higher
          no>weights number>two of>five of>floor of>that off>to on>me on>that on>tuesday one>good one>rest
          other>hand other>leg press>down press>it rack>it ribs>down roll>back roll>out round>so same>thing
          second>go second>one seconds>each see>you seven>eight shoulders>down side>plank sideways>on sit>tall
          slide>forward slow>slow split>squats stay>there straight>on support>hold swap>over ten>more than>that
          that>hip the>bridge the>crate the>curb the>curls the>day the>door the>ear the>elbow the>end the>floor
          the>knee the>legs the>menu the>middle the>nose the>number the>other the>pair the>rack the>shin the>sides
          the>spine the>step the>third the>toes the>wall the>wrists them>down them>in this>morning three>rounds
          three>sets times>round to>be to>breathe to>side to>standing too>far towards>you turn>around twice>through
          two>three up>higher up>is up>slowly up>tall want>to way>out we>are we>go with>control with>that you're>on
          you>come you>fancy you>lift you>lower you>need you>sit your>arm your>backs your>ears your>fists
          your>hands your>shirt your>sides your>thigh your>thighs your>toes
        `,
      ],
      [
        -0.25,
        `
          a>bent a>big a>chap a>dog a>few a>folded a>friend a>full a>good a>knee a>light a>lot a>pair a>proper
          a>rolled a>shoulder a>slow a>spot a>wall and>a and>drop and>hips and>i and>i've and>keep and>leg and>let
          and>now and>one and>out and>pull and>the and>there and>you are>tight are>up arms>up as>far as>it asked>me
          at>the back>and back>to been>told bit>of box>jumps call>it can>do can>go can>hear can>see can>tell
          chest>height come>in comes>up count>of dead>lift do>not do>that do>this don't>go don't>want down>and
          down>to empty>bar end>good end>hello every>day feet>wide floor>away floor>press forty>five from>there
          get>it give>me going>to going>up good>morning good>one hang>off have>a heel>up hips>up i've>got i>thought
          if>it if>the if>you're if>you've if>your in>here in>total into>the is>all is>the it's>a it's>that it>all
          it>and it>for it>like it>on it>with it>without keep>hold knees>over knees>up last>thing leg>back leg>goes
          leg>only leg>up light>headed like>a lower>back makes>it muscle>up my>first next>one nice>and no>burpees
          not>a not>doing of>10 of>a of>two of>your off>four off>the on>a on>saturday on>your one>foot one>knee
          one>way opposite>arm other>day other>knee out>breath out>in out>of over>it over>the pelvic>floor
          people>say pull>up reverse>lunges right>hand roll>up same>again same>way seconds>off sets>of sharp>pain
          sort>of step>back step>off straight>back straight>down tell>you ten>minutes ten>steps than>you
          that's>been that's>the that's>what that's>your the>back the>ball the>band the>bear the>best the>car
          the>ceiling the>clean the>clock the>front the>full the>good the>hamstrings the>handle the>hard the>head
          the>leg the>one the>operated the>room the>same the>second the>squat the>stage the>standing the>towel
          the>way they>go this>is this>time three>breaths three>to to>do to>eight to>get to>go to>help to>your
          told>you twenty>five twenty>metres two>sets two>thousand under>the up>and up>to wall>sit want>it warm>up
          we'll>go when>you with>a with>the with>your you're>feeling you've>got you>can't you>could you>have
          you>put you>should you>stop your>big your>feet your>hand your>head your>heel your>heels your>kneecap
          your>left your>lowest your>middle your>own your>second your>side your>tail your>time your>tummy
          your>weight
        `,
      ],
      [
        -0.5,
        `
          a>day a>mat a>plank and>just and>over and>take and>then as>you at>home breathe>in breathe>out dead>lifts
          do>it each>one every>exercise five>four for>a for>the four>three go>two half>kneeling i>said if>you
          in>one in>the it's>not it>down it>feels keep>it knees>down legs>long let>it let>us make>it ninety>seconds
          of>the on>the operated>leg push>up same>time step>it that's>a that's>how the>bar the>big the>first
          the>hand the>hips the>last the>rings the>weights the>whole to>see to>the two>hundred upside>down
          you've>done you>feel you>get your>bottom your>elbows your>head's your>lower
        `,
      ],
      [-0.75, 'first>time let>them the>side you>know'],
      [-1, 'before>you'],
    ],
    gap: [
      [0.75, 'one>two that>and up>down'],
      [
        0.5,
        `
          breath>if breathe>and chest>up feet>and five>six forward>as go>one in>for it>so knee>out knees>up leg>if
          not>there one>down one>good one>that's over>on rest>the rest>you shoulders>on sit>up six>and six>seven
          squats>hold ten>and them>if then>sit three>four up>then ups>hands width>and
        `,
      ],
      [
        0.25,
        `
          arm>and arms>long arms>to back>the bend>your bottom>and breath>and chair>the down>a down>like down>that's
          fine>a five>if five>then floor>do foot>down four>and four>five go>don't go>i go>if go>in good>and
          hands>if hands>off head>and hips>up in>and in>on in>so it>and it>good it>it it>that's it>then it>three
          knees>over left>and leg>back leg>don't lovely>and me>in minutes>on more>and nine>ten off>last off>then
          on>back one>in one>off out>at out>the out>to pull>up ready>and round>one row>the seconds>on side>if
          these>at time>and to>a today>and touches>your twelve>and two>down up>back up>breathe up>i up>no up>one
          up>we'll want>a week>and you>as you>if you>only
        `,
      ],
      [
        -0.25,
        `
          5>and 8>and a>little all>fours all>the and>don't and>if and>let and>stand and>the arms>and as>well as>you
          at>the back>and back>keep back>knee back>to before>you behind>you belly>button bench>press breath>out
          can>keep can>see chair>feet come>and come>up do>not don't>let down>and down>as down>i down>one down>till
          down>to down>two each>leg each>side even>if first>if five>four floor>and floor>press for>five for>ten
          for>the for>three for>twenty forty>five forward>until four>counts front>and front>heel go>and go>as
          go>back go>go go>home go>round go>so go>up good>leg good>morning got>the half>a half>and hand>if hand>on
          hands>and hands>on here>we high>knees home>and i>don't if>it's if>you if>you're if>your in>a in>between
          in>keep in>one it>a it>as it>down it>go it>harder it>if it>in it>there it>up knees>bent knees>go knees>if
          know>how leg>and leg>goes leg>long leg>raise legs>if legs>long lift>one like>a line>from long>step
          middle>and minutes>and minutes>rest more>if next>door next>week nice>and nose>and not>a now>the of>ten
          of>the of>those of>you of>your off>if on>my on>the on>your one>go one>hand one>knee one>long one>side
          one>then operated>leg other>leg out>breath out>of out>on out>two press>and quick>and quiet>feet rest>your
          round>the round>two second>one second>toe seconds>each seconds>four seconds>left see>if set>the
          sharp>pain should>feel shoulders>let sit>down slow>slow small>and soft>knees squats>and stand>tall
          stand>up static>quads straight>and tall>and tall>hips thank>you that>one that>you the>back the>bottom
          the>floor the>front the>knee the>last the>other the>same the>top them>and there>if there>we there>you
          these>and they>don't this>morning times>a times>and to>come to>do to>get to>go to>make together>and
          too>much twenty>five twenty>two twice>a twice>as two>and two>one under>shoulders under>the up>if up>tall
          up>there up>to up>two up>your warm>up way>down we>go what>you when>i with>your you>and you>can you>feel
          you>get you>have you>keep you>know you>sit you>skip you>that's your>back your>chest your>feet your>hands
          your>hips your>knees your>shoulders
        `,
      ],
      [
        -0.5,
        `
          all>right and>i and>then away>and away>from back>down blow>out breathe>out bus>stop change>legs curls>and
          down>slow empty>bar fine>if forward>and four>three go>on good>good hips>don't hollow>hold hundred>and
          in>front in>the it>out keep>hold knees>don't last>one let>go like>it's like>you're middle>toes number>two
          off>the one>foot one>if one>leg other>one other>side out>as shoulder>blades stop>and three>and three>two
          time>i time>if to>sit up>on way>up you>go
        `,
      ],
    ],
  },
}
