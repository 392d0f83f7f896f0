/**
 * How much each feature of a gap between words (break-features.ts) speaks for a comma or a full stop there, against no mark:
 * the natural log of odds. By the sign, the words or classes that have it. Fitted by tests/fit/fit-breaks.ts, not by hand.
 */
type Rows = readonly (readonly [weight: number, of: string])[]

export const BREAK_WEIGHTS: Readonly<Record<'comma' | 'stop', Readonly<Record<string, Rows>>>> = {
  comma: {
    before: [
      [1, 'laps'],
      [
        0.75,
        `
          8 again clock fine hat lunges mailbox no okay please reds right saturday slowly started stop tall well
        `,
      ],
      [
        0.5,
        `
          1 10 2 9 ache actually armpit around banana bear bent block book bow brace breathe breathing butt calves
          carol charity circuit close college cushion denise dog done door drills drop dull eights extend fifth
          finish finished first flat forwards fraction hamstrings happens heaving heavy himself hiya home honestly
          horns hundreds jab jean kneeling kyle lad ladies land least left lengths lift listen locked locks lot
          many marged metres mornings much muscle name neck new numbers percent place point punch ray ready
          recovery reps rest ringing round rows rule sets seven shoulders side simple sitting six smooth squeaks
          stations steps stool stopped support swings tables talks there through tiptoes toboggan today together
          top tray turn turning up ups view walking work yet
        `,
      ],
      [
        0.25,
        `
          5 60 across allowed alright altogether anchor ankles apart ask awake back backwards balcony banister bar
          barking basics beat beautiful bed behind belly bench better bin blades bleeding blocks board body boring
          bottle bottom bounce bounces bouncing bound bowl break breakfast bridging bugs burn button clever
          climbers club core county cradles cramp cried crosses curls day deadlifts did dips distance dizziness
          down drink dry duck dum dumbbell dumbbells ear ears either everyone faces favourite fifteen flying fold
          frame fresh friday friend front gap gradually grapevine hangers harder heartburn heating height help here
          hills him hop hours hover hum inside joining joking jumps kneecap laces ladder line literally lively loo
          love man manage marching mat maureen medium middle midwife monday month moving needle normal oh ones
          opened opening option order pad pain pause pence pillows plank plates play pockets pressure promise
          puddle puff quads raise ratio red remember replacement resistance rhythm righto ropes rower sandwich
          scoop seat shelf shout sinking sixes skaters slides slightly so song sorry sound spikes splits squash
          squatting squish stacked stand standing stands stare stops strain strength stride strong struggling
          surprised sweep swimmy swims tabletop tailbone talking taps these thing thirteen thread tied tightness
          tiles tilts tin tiny tip toe toes tonight total touching trampoline trouble twists two waist ward wash
          weddings week wheel wide widen wider width wings won't works year yes zip
        `,
      ],
      [
        -0.25,
        `
          3 500s 6 a about ago alone always an ankle another anybody anyone are asked asking away baby backside bag
          balance band barbell bars be beans because before bell bend best blue books both brave breath bridges
          bring bum bump bus by call can't chairs chalk chest clean coach collar come complaining council couple
          crate cupboard daughter deep do does doesn't dollars don't doorway downs drags dropping easy else empty
          end euro every except facing fall fancy far faster feeling fifty fingers free frog get gets go goal goes
          gossip grab grass group grow had hair halfway happy hard have he heals hear heels higher his holding
          holds hope hour how hundred i'm i've if inches into inwards is jacks keep kickstand lean leave let life
          like little looking loop lose loud lower make makes mile minute missed morning myself ninety o'clock old
          one's operated other outside own pace pelvic pinches pins planks planted pocket pose post proper purple
          pushups put quick quiet quietly rate rep ribs rings rock roll rolls rules s safety said saying shape
          shins shoulder sigh since single sixty slower small sock soft some somebody's something sore speed spins
          start starts stays straighten stretches strict strokes swing takes tap tell ten thanks that's the them
          there's they they've think thought thousand thumb tight tomorrow too trainers trip tss under until use
          very want was we'll weekend weeks whatever when who whole will wonder would you you'll you're you've your
          yourself
        `,
      ],
      [
        -0.5,
        `
          15 4 all and as at big but car comes dead doing elbows everything exercise feel feels for from full
          garage got half hand handle heel i it's kick last late legs list look means mid moan not now of only
          opposite or phone plate pretend prize push questions rail rush safeties same says screen second shoes
          sleep slide somebody squeezes stay stick still take than thank thinks third till to told um us watch we
          what where with
        `,
      ],
      [-0.75, 'er forty just say see sheet times twenty'],
    ],
    after: [
      [1.25, 'same'],
      [1, 'both er forehead marcus near nearly no whatever which yes'],
      [
        0.75,
        `
          5 because ease honestly jean just like mine's nobody's opposite small so sorry they're
        `,
      ],
      [
        0.5,
        `
          10 12 25 40 8 about always arms backs big bird brisk carol drops ear elbows eleven even everybody except
          final fingertips five's forget funny gareth grow hang have haven't he he's heels hiding hiss hold i i'll
          i've ignore it'll keep kyle leave lie lovely malcolm maybe nobody other otherwise park please push quad
          quick quit remember ride ron rows sat she shut some somebody spikes stack sticks straightening straps
          strict swings that's then there's they though thumbs tiny triceps tss twice uh wait walk whether without
          write
        `,
      ],
      [
        0.25,
        `
          11 20 24 3 achilles ask baby before bending bleeding blow blues bridges bring building burn by bye calf
          carry chalk change cheerio chin coach could creep crown curls da dead denise derek didn't dips do doorway
          double drills drive ears easy ends everyone's everything fabulous falls farmer's feat figure find friends
          gather gloves goblet grand halve hamstring handbags heaviest help her hi hike hollow knees knuckles lads
          land lead lean little love lying march marged mark maureen medium mind mine mo mountain nose not nothing
          oh order pad palm palms partner phones pretend priya pushups rack ratio rear rest reverse ring rings rope
          send settle seven shake shoulders sing single sitting size slow snap sort spread sprinkler squeeze step
          strides suitcase sweet switch ta taking tap thank thanks they've tighten tops tram tuck um umbrella
          welcome wipe y'all
        `,
      ],
      [
        -0.25,
        `
          1 a across afterwards ago ahead along angle anybody anyone apart are around be beat bent between blade
          blood bottom box breath breaths button cardigans cat chair comes couple crease deep depth does effort
          eight eighty else enough face facing finish fists five fives floor for forearms forward frame from get
          got grip halo hand hard haul height hello high in into it its kick kneel kneeling know language later
          left lift listen lock long lot lower makes mean mini morning much neck okay on once out past pop quads
          raise reach ready right rounds run say seat seconds see sets should shoulder show sigh skip sky slide
          something spot station steps stretch stride strong stuff swap tailbone tall team ten tens than that the
          thigh things think this thursday time tip together touch tucked tuesday turn under up ups wall want warm
          was way we we've week weight what why width will would wrist yet you you'll you've your yourself zip
        `,
      ],
      [
        -0.5,
        `
          18 60 arm as at behind bench bit blades bone bones close coming doing each far feel fifty first flat foot
          four goes going had has heavy home how hundred i'd is jog knee leg lets level line low more nine of ones
          open over people position side since start them there thing through till to toe tonight too twist we'll
          were when who you'd
        `,
      ],
      [-0.75, "again done here instead next stay today while who's"],
      [-1, 'now'],
    ],
    after2: [
      [0.75, "body dum explode isn't jacks lower real sides"],
      [
        0.5,
        `
          1 22 6 achilles allowed almost an bad bent bounce break carries changed cheat climbers counting crawl
          days doesn't drag ease euro fast few find finished foot hand hang here's home jog kneel know lad lives
          melt neither nobody's ones our pointing pump quiet rolled saves should smaller standing's steam thick
          tight very was whatever whoever's yes
        `,
      ],
      [
        0.25,
        `
          34 5 90 across ago all another anybody assistant away balance bang blues body's boxing breaths broom
          can't chain change check cheeks clever coming control count counts depth desk dips dizziness dogs drills
          drive dropping dumb during easier easily either eyes face falls fancy felt file flat flying folded frozen
          gave glute granddaughter gravity greasy has hay heads helps heroes holding honestly hour hovering hum
          inches it'll join just keeps lands laundry leave leg lengths letter lifting listen loads long lots love
          meant minds mine minute minutes mississippi more move moved nearly necks neighbours nobody nothing odd
          one's only operated osteoporosis palm parked press pretend pulls pushes rack ran read really record
          recovery remember return romanian rounds row row's rushing saving shame shove shuffle single sitting snow
          soft soften softly sort squats start stop straddle stretch stride support tall taps them they're thing
          those through tightrope toboggan travelling trip tss tucked turns underneath until upright watch watching
          whichever why woman won't word
        `,
      ],
      [
        -0.25,
        `
          19 3 about aches ahead along always am and arm around banana bear been below bench bending bird bit board
          bottom breathe breathing bridges brisk broke build but calf came cardigan chalk coach cold come comes
          could couple do does doing door downs eleven end er even every everyone feels feet fine first foot's
          forget four fours friends get gets give goblet good half hands haven't he's head heard heart heels height
          hello her here hip's his hope hug hundreds i'll i'm inside instead into its joking lead lean leaning
          let's level lie like line little lock lovely lying made magic mat maybe most much neck need normal
          normally nose number okay once one pace pauline pause phone pick pinched pounds pull push race rails reds
          rep ribs ring roll rowed same save seat second seven she's show sideways sit sixes snap sore sorry squash
          standing started stay straight straps strict strides strokes sure swing swinging takes ten than then
          they'd thighs things third thirty tied tighten time top twist uh um us walk weight well went who wings
          with working would wrist written wrong yank you you'd you're
        `,
      ],
      [
        -0.5,
        `
          10 8 after any bend both chest day did drop dumbbells each ever feel fifteen forty from front had high
          hips left legs my next no onto or outside park please reach skip stand that'll this today tonight touch
          ups use want way we're week when whole
        `,
      ],
      [-0.75, 'march metres so'],
    ],
    opening: [
      [0.75, 'auxiliary>pronoun because>because contraction>manner'],
      [
        0.5,
        `
          and>and and>because and>contraction article>auxiliary because>auxiliary contraction>never never>article
          never>manner number>manner opener>auxiliary opener>unit part>ing pronoun>never
        `,
      ],
      [
        0.25,
        `
          and>never and>opener and>verb because>number because>other because>verb contraction>contraction
          kit>article ly>because ly>other manner>end manner>kit manner>ly manner>pronoun never>contraction
          number>ing opener>kit part>manner pronoun>auxiliary verb>and
        `,
      ],
      [
        -0.25,
        `
          and>number article>and article>article article>kit article>preposition auxiliary>ing auxiliary>manner
          auxiliary>verb because>article because>pronoun contraction>ing contraction>opener contraction>preposition
          contraction>unit ing>and ing>article ing>contraction ing>number ing>verb kit>auxiliary kit>because
          kit>kit kit>number kit>verb ly>article manner>article manner>because manner>contraction manner>opener
          manner>other never>auxiliary never>ly number>auxiliary number>because number>kit number>never
          opener>contraction opener>manner opener>opener opener>other opener>preposition other>and other>auxiliary
          other>contraction other>end other>ing other>manner other>never other>unit other>verb part>and
          part>article part>auxiliary part>number part>unit part>verb preposition>and preposition>article
          preposition>ing preposition>kit preposition>never preposition>number preposition>opener preposition>other
          preposition>part preposition>pronoun pronoun>and pronoun>because pronoun>contraction pronoun>end
          pronoun>ing pronoun>number pronoun>part pronoun>preposition pronoun>pronoun unit>and unit>article
          unit>auxiliary unit>contraction unit>manner unit>opener unit>other unit>part unit>pronoun unit>verb
          verb>ing verb>never verb>number verb>part
        `,
      ],
      [
        -0.5,
        `
          and>other and>part article>pronoun auxiliary>auxiliary auxiliary>other auxiliary>preposition
          because>opener ing>part manner>verb number>contraction number>verb opener>never opener>pronoun
          other>because part>because part>contraction part>pronoun preposition>auxiliary preposition>unit
          preposition>verb pronoun>article pronoun>opener verb>contraction verb>opener
        `,
      ],
    ],
    closing: [
      [0.75, 'contraction>pronoun'],
      [
        0.5,
        `
          and>ly contraction>ly contraction>opener manner>kit number>number number>opener part>manner
          preposition>opener unit>kit unit>unit verb>unit verb>verb
        `,
      ],
      [
        0.25,
        `
          and>kit and>part article>never article>unit ing>because ing>manner ing>opener ing>pronoun kit>manner
          kit>opener kit>other ly>article ly>other manner>number manner>part number>ing number>kit number>unit
          opener>ing opener>manner opener>opener other>opener preposition>manner preposition>pronoun pronoun>ly
          unit>number verb>kit
        `,
      ],
      [
        -0.25,
        `
          and>and and>article and>contraction and>unit and>verb article>article article>auxiliary article>number
          article>opener article>preposition article>pronoun auxiliary>article auxiliary>kit auxiliary>never
          auxiliary>number auxiliary>preposition auxiliary>verb because>article because>auxiliary
          because>contraction because>other contraction>article contraction>auxiliary contraction>number
          contraction>verb end>opener ing>article ing>preposition kit>and kit>auxiliary kit>contraction
          kit>preposition manner>article manner>unit manner>verb never>preposition number>and number>manner
          number>preposition number>pronoun opener>contraction opener>part opener>verb other>article other>because
          other>kit other>verb part>and part>article part>contraction part>never part>part preposition>and
          preposition>article preposition>contraction preposition>never preposition>preposition preposition>verb
          pronoun>and pronoun>article pronoun>part unit>because unit>pronoun verb>article verb>because
          verb>contraction verb>ing verb>never verb>number verb>pronoun
        `,
      ],
      [
        -0.5,
        `
          and>pronoun article>manner because>manner because>pronoun contraction>manner contraction>preposition
          ing>and kit>part manner>and manner>because manner>pronoun never>ing number>auxiliary number>because
          other>and other>auxiliary other>contraction part>auxiliary part>because part>ly part>pronoun
          preposition>auxiliary preposition>because unit>and verb>and
        `,
      ],
      [-0.75, 'part>unit'],
    ],
    around: [
      [1, 'article>other>article article>verb>article'],
      [
        0.75,
        `
          and>number>and article>manner>because article>other>pronoun kit>other>other number>number>preposition
          opener>manner>verb other>preposition>never preposition>number>pronoun pronoun>preposition>verb
        `,
      ],
      [
        0.5,
        `
          and>opener>article and>opener>other and>other>contraction and>other>number and>part>and
          article>ing>article article>kit>article article>kit>number article>kit>part article>number>article
          article>part>part article>preposition>because article>unit>number article>unit>pronoun
          auxiliary>ing>other auxiliary>other>and contraction>manner>verb contraction>never>other
          contraction>opener>and contraction>opener>contraction contraction>other>contraction
          contraction>other>verb ing>other>and ing>verb>number kit>manner>preposition kit>opener>other
          kit>opener>preposition manner>manner>because manner>other>auxiliary manner>other>because manner>part>verb
          never>other>contraction number>number>never number>number>part number>other>number number>other>unit
          number>part>other number>unit>and number>unit>other number>verb>and number>verb>number
          opener>because>article opener>manner>manner opener>opener>verb opener>other>never opener>other>other
          opener>preposition>and opener>unit>opener other>because>other other>ing>because other>kit>manner
          other>number>contraction other>number>number other>opener>part other>opener>pronoun
          other>part>contraction other>preposition>and other>pronoun>and other>pronoun>verb other>verb>and
          part>manner>other part>other>part part>part>verb part>preposition>verb part>verb>and preposition>and>and
          preposition>article>and preposition>ing>other preposition>manner>article preposition>opener>opener
          preposition>other>manner preposition>part>verb preposition>pronoun>preposition pronoun>auxiliary>and
          pronoun>opener>pronoun pronoun>other>and unit>other>contraction verb>manner>verb verb>opener>number
          verb>other>kit verb>verb>verb
        `,
      ],
      [
        0.25,
        `
          and>auxiliary>article and>kit>preposition and>never>other and>number>pronoun and>opener>opener
          and>opener>verb and>other>opener and>part>manner and>part>part and>preposition>opener
          and>preposition>verb and>verb>and article>auxiliary>other article>ing>and article>kit>never
          article>kit>other article>kit>pronoun article>number>contraction article>number>part article>opener>and
          article>opener>manner article>other>manner article>other>number article>part>article article>part>never
          article>part>number article>preposition>contraction article>preposition>opener
          article>preposition>preposition article>verb>pronoun auxiliary>article>article auxiliary>ing>and
          auxiliary>ing>verb auxiliary>manner>and auxiliary>number>article auxiliary>opener>verb
          auxiliary>other>ing auxiliary>other>manner auxiliary>other>opener auxiliary>other>other
          auxiliary>preposition>pronoun auxiliary>pronoun>number auxiliary>pronoun>preposition auxiliary>verb>verb
          because>contraction>preposition because>other>article because>other>preposition contraction>ing>number
          contraction>ing>verb contraction>number>number contraction>opener>other contraction>other>never
          contraction>pronoun>and end>opener>article ing>article>article ing>because>contraction ing>number>number
          ing>other>article ing>preposition>because ing>preposition>other ing>pronoun>article kit>other>contraction
          kit>other>manner kit>pronoun>other kit>verb>preposition manner>kit>and manner>kit>preposition
          manner>manner>other manner>manner>verb manner>number>number manner>opener>article manner>opener>verb
          manner>other>part manner>other>pronoun manner>part>preposition manner>preposition>and
          manner>preposition>manner manner>preposition>part manner>preposition>preposition never>other>other
          never>other>verb never>preposition>pronoun never>verb>verb number>article>verb number>manner>and
          number>manner>number number>opener>pronoun number>opener>verb number>other>article number>other>because
          number>preposition>preposition number>unit>number number>unit>unit number>unit>verb opener>and>other
          opener>and>preposition opener>ing>other opener>number>and opener>number>manner opener>number>verb
          opener>other>part opener>preposition>number opener>unit>other other>article>verb other>auxiliary>manner
          other>because>opener other>ing>auxiliary other>ing>part other>kit>auxiliary other>kit>contraction
          other>manner>because other>manner>number other>manner>other other>never>verb other>number>because
          other>opener>never other>opener>unit other>other>article other>other>because other>other>kit
          other>other>number other>other>pronoun other>other>verb other>part>and other>part>article other>part>ing
          other>part>pronoun other>pronoun>because other>pronoun>manner other>unit>and other>unit>preposition
          other>unit>verb other>verb>opener part>and>because part>ing>pronoun part>manner>number part>manner>opener
          part>manner>part part>number>number part>other>auxiliary part>other>kit part>other>number
          part>other>pronoun part>other>verb part>preposition>auxiliary part>preposition>other part>verb>ing
          part>verb>verb preposition>and>article preposition>and>preposition preposition>article>pronoun
          preposition>ing>manner preposition>manner>and preposition>manner>unit preposition>number>contraction
          preposition>number>manner preposition>number>preposition preposition>opener>and preposition>opener>other
          preposition>other>and preposition>other>verb preposition>part>article preposition>preposition>and
          preposition>pronoun>article preposition>pronoun>kit preposition>pronoun>part preposition>pronoun>pronoun
          preposition>pronoun>verb preposition>unit>article preposition>unit>contraction preposition>verb>other
          preposition>verb>part pronoun>auxiliary>pronoun pronoun>because>other pronoun>manner>part
          pronoun>manner>unit pronoun>number>number pronoun>opener>article pronoun>opener>unit
          pronoun>other>auxiliary pronoun>other>because pronoun>other>never pronoun>preposition>other
          pronoun>verb>because pronoun>verb>number pronoun>verb>verb unit>article>verb unit>manner>and
          unit>manner>article unit>number>opener unit>opener>other unit>other>article unit>part>opener
          unit>preposition>number unit>preposition>other unit>preposition>verb unit>unit>other verb>ing>manner
          verb>manner>article verb>manner>opener verb>manner>part verb>number>number verb>opener>article
          verb>other>opener verb>part>verb verb>preposition>auxiliary verb>preposition>never verb>preposition>other
          verb>preposition>part verb>pronoun>and verb>pronoun>never verb>pronoun>part verb>verb>pronoun
        `,
      ],
      [
        -0.25,
        `
          and>article>other and>opener>part and>other>preposition and>other>pronoun and>preposition>part
          and>preposition>pronoun and>pronoun>other and>pronoun>verb and>verb>article and>verb>manner
          and>verb>other and>verb>part article>ing>manner article>ing>preposition article>kit>auxiliary
          article>kit>because article>kit>opener article>kit>preposition article>manner>preposition
          article>number>number article>number>other article>number>verb article>opener>part article>opener>verb
          article>other>ing article>other>other article>part>auxiliary article>preposition>and
          article>preposition>article article>preposition>other article>preposition>part article>preposition>verb
          article>verb>and article>verb>contraction article>verb>preposition auxiliary>article>other
          auxiliary>article>verb auxiliary>ing>article auxiliary>ing>preposition auxiliary>ly>other
          auxiliary>number>because auxiliary>number>number auxiliary>other>because auxiliary>preposition>article
          auxiliary>preposition>number auxiliary>preposition>verb auxiliary>pronoun>pronoun because>article>other
          because>article>part because>contraction>other because>manner>because because>other>auxiliary
          because>other>because because>pronoun>auxiliary because>pronoun>other contraction>article>other
          contraction>ing>article contraction>ing>manner contraction>number>and contraction>opener>pronoun
          contraction>opener>verb contraction>other>preposition contraction>preposition>pronoun
          contraction>pronoun>verb end>opener>opener end>opener>other ing>article>other ing>other>auxiliary
          ing>preposition>article ing>preposition>contraction ing>preposition>preposition ing>preposition>pronoun
          ing>pronoun>preposition kit>and>verb kit>opener>verb kit>verb>verb manner>article>other
          manner>auxiliary>article manner>because>other manner>manner>manner manner>opener>preposition
          manner>other>article manner>other>other manner>other>verb manner>preposition>article manner>verb>article
          manner>verb>number manner>verb>preposition manner>verb>pronoun never>other>preposition never>verb>article
          number>and>number number>opener>and number>part>preposition number>preposition>other number>unit>because
          number>unit>manner number>unit>opener number>unit>preposition opener>manner>other
          opener>number>preposition opener>number>pronoun opener>other>because opener>other>contraction
          opener>other>kit opener>other>manner opener>part>and opener>part>preposition opener>preposition>other
          opener>verb>article other>and>article other>and>contraction other>and>number other>and>other
          other>and>pronoun other>and>verb other>article>and other>article>kit other>article>other
          other>article>part other>auxiliary>other other>auxiliary>pronoun other>auxiliary>verb
          other>because>article other>because>number other>because>pronoun other>contraction>article other>ing>and
          other>ing>manner other>ing>other other>ing>verb other>kit>article other>kit>number other>kit>preposition
          other>manner>manner other>never>other other>number>manner other>number>other other>number>preposition
          other>number>unit other>opener>manner other>opener>number other>other>auxiliary other>other>preposition
          other>other>unit other>part>never other>part>opener other>part>verb other>preposition>article
          other>preposition>pronoun other>pronoun>article other>pronoun>other other>pronoun>preposition
          other>unit>contraction other>unit>other other>verb>number other>verb>preposition other>verb>pronoun
          part>and>part part>and>verb part>article>other part>article>verb part>because>contraction
          part>manner>manner part>other>because part>part>other part>part>preposition part>preposition>number
          part>preposition>preposition part>verb>article part>verb>other preposition>and>verb
          preposition>article>ing preposition>article>kit preposition>article>manner preposition>article>other
          preposition>article>part preposition>article>unit preposition>because>contraction
          preposition>because>other preposition>because>pronoun preposition>ing>preposition
          preposition>manner>because preposition>manner>contraction preposition>number>because
          preposition>number>unit preposition>number>verb preposition>opener>article preposition>opener>pronoun
          preposition>other>auxiliary preposition>other>because preposition>other>pronoun preposition>part>number
          preposition>part>preposition preposition>preposition>article preposition>preposition>because
          preposition>preposition>other preposition>preposition>pronoun preposition>pronoun>opener
          preposition>unit>verb preposition>verb>preposition pronoun>auxiliary>auxiliary pronoun>auxiliary>never
          pronoun>ing>pronoun pronoun>manner>other pronoun>never>verb pronoun>opener>and pronoun>opener>number
          pronoun>other>article pronoun>other>manner pronoun>other>pronoun pronoun>preposition>part
          pronoun>preposition>preposition pronoun>verb>manner unit>manner>because unit>opener>verb
          unit>other>preposition unit>preposition>and verb>and>verb verb>article>kit verb>article>other
          verb>article>part verb>article>verb verb>ing>opener verb>manner>and verb>manner>because
          verb>manner>contraction verb>manner>number verb>number>kit verb>number>part verb>opener>other
          verb>other>and verb>other>auxiliary verb>other>preposition verb>preposition>preposition
          verb>pronoun>article verb>pronoun>because verb>pronoun>contraction verb>pronoun>manner
          verb>pronoun>preposition verb>pronoun>verb verb>unit>because verb>verb>article
        `,
      ],
      [
        -0.5,
        `
          and>manner>verb and>other>part and>part>other article>ing>other article>manner>other article>manner>verb
          article>opener>other article>other>kit article>preposition>manner article>unit>preposition
          auxiliary>other>preposition auxiliary>other>verb because>pronoun>verb contraction>other>article
          ing>other>contraction kit>other>number manner>preposition>other number>other>and number>other>verb
          number>preposition>and opener>opener>opener opener>other>number opener>unit>pronoun
          other>because>contraction other>manner>verb other>other>opener other>other>part other>part>preposition
          other>verb>because part>other>preposition preposition>article>verb preposition>ing>article
          preposition>number>part preposition>part>other preposition>verb>and preposition>verb>number
          pronoun>auxiliary>other pronoun>other>other pronoun>preposition>manner pronoun>verb>and
          unit>opener>article unit>preposition>preposition verb>preposition>manner verb>preposition>opener
        `,
      ],
      [-0.75, 'part>other>contraction'],
    ],
    across: [
      [
        0.75,
        `
          ing>and>verb manner>part>other number>and>preposition number>article>number number>other>other
          opener>verb>preposition other>contraction>manner other>number>preposition part>and>auxiliary
          part>verb>article preposition>and>and verb>verb>verb
        `,
      ],
      [
        0.5,
        `
          and>because>contraction article>and>contraction article>article>part auxiliary>manner>and
          auxiliary>number>number auxiliary>pronoun>auxiliary because>other>preposition contraction>other>auxiliary
          ing>article>manner ing>manner>preposition ing>other>ing ing>part>preposition ing>pronoun>auxiliary
          kit>and>pronoun kit>article>part kit>other>contraction kit>other>part kit>part>preposition
          manner>contraction>manner manner>manner>number manner>other>part manner>pronoun>other never>other>opener
          number>and>manner number>and>opener number>other>manner number>pronoun>other opener>and>verb
          opener>article>auxiliary opener>article>unit opener>contraction>other opener>part>other
          opener>unit>number other>and>verb other>article>ing other>article>number other>article>opener
          other>auxiliary>pronoun other>kit>article other>manner>manner other>number>other other>number>unit
          other>opener>manner other>opener>other other>opener>part other>other>other other>part>preposition
          other>pronoun>auxiliary other>pronoun>never other>verb>and part>auxiliary>pronoun part>manner>other
          part>number>article part>number>part part>part>manner part>part>part part>pronoun>never
          preposition>and>article preposition>and>contraction preposition>and>opener preposition>and>pronoun
          preposition>because>other preposition>kit>preposition preposition>never>verb preposition>part>preposition
          preposition>unit>preposition preposition>verb>other pronoun>article>other pronoun>because>pronoun
          unit>article>unit unit>number>unit unit>other>number unit>unit>preposition unit>verb>preposition
          verb>and>preposition verb>article>auxiliary verb>contraction>other verb>number>manner verb>number>other
          verb>other>article verb>other>auxiliary verb>part>verb verb>pronoun>auxiliary
        `,
      ],
      [
        0.25,
        `
          and>preposition>article article>ly>other article>manner>article article>number>unit
          article>pronoun>auxiliary article>pronoun>other auxiliary>auxiliary>pronoun auxiliary>opener>verb
          because>other>and because>verb>preposition contraction>other>contraction ing>and>pronoun
          ing>article>number ing>contraction>manner ing>manner>other ing>other>article ing>other>pronoun
          ing>verb>preposition ing>verb>pronoun kit>and>other kit>contraction>number kit>kit>preposition
          kit>manner>article kit>never>verb kit>number>other kit>number>part kit>part>article kit>preposition>part
          kit>pronoun>auxiliary kit>verb>article kit>verb>because kit>verb>pronoun manner>and>and
          manner>and>article manner>and>pronoun manner>article>ing manner>article>other manner>because>because
          manner>because>contraction manner>contraction>article manner>manner>and manner>manner>because
          manner>number>and manner>number>other manner>number>preposition manner>other>preposition
          manner>other>pronoun manner>part>preposition manner>verb>other number>and>and number>because>contraction
          number>because>manner number>because>other number>contraction>preposition number>manner>part
          number>number>and number>number>manner number>number>number number>number>opener number>opener>verb
          number>part>number number>preposition>because number>preposition>number number>preposition>preposition
          number>verb>and opener>and>article opener>and>contraction opener>and>pronoun opener>article>part
          opener>auxiliary>article opener>because>auxiliary opener>because>pronoun opener>manner>preposition
          opener>opener>and opener>opener>pronoun opener>opener>unit opener>other>and opener>other>article
          opener>other>kit opener>other>other opener>other>part opener>other>preposition opener>other>verb
          opener>part>unit opener>part>verb opener>preposition>other opener>preposition>preposition
          opener>verb>article opener>verb>other other>and>and other>and>preposition other>article>manner
          other>auxiliary>article other>because>because other>because>opener other>because>verb
          other>contraction>opener other>ing>auxiliary other>ing>other other>kit>other other>manner>auxiliary
          other>manner>ing other>manner>part other>manner>pronoun other>manner>unit other>never>other
          other>never>preposition other>number>manner other>opener>opener other>other>ing other>other>pronoun
          other>part>manner other>part>other other>pronoun>kit other>pronoun>other other>unit>article
          other>verb>article other>verb>preposition other>verb>pronoun part>and>contraction part>and>number
          part>article>other part>because>other part>contraction>article part>contraction>ing
          part>contraction>never part>contraction>verb part>never>article part>opener>preposition
          part>other>pronoun part>other>unit part>part>and part>part>preposition part>preposition>contraction
          part>preposition>ing part>verb>number preposition>and>because preposition>article>auxiliary
          preposition>contraction>never preposition>contraction>other preposition>kit>article
          preposition>number>number preposition>opener>opener preposition>opener>preposition
          preposition>other>preposition preposition>preposition>and preposition>preposition>because
          preposition>preposition>ing preposition>pronoun>never preposition>pronoun>other preposition>verb>kit
          preposition>verb>number pronoun>and>article pronoun>and>verb pronoun>contraction>never
          pronoun>ing>pronoun pronoun>manner>verb pronoun>number>unit pronoun>other>and pronoun>other>manner
          pronoun>other>opener pronoun>pronoun>verb unit>and>contraction unit>and>number unit>and>other
          unit>and>preposition unit>because>article unit>contraction>article unit>manner>article unit>number>other
          unit>number>preposition unit>other>unit unit>preposition>pronoun verb>and>number verb>article>opener
          verb>contraction>never verb>contraction>number verb>ing>other verb>manner>because verb>never>verb
          verb>other>pronoun verb>part>manner verb>verb>article
        `,
      ],
      [
        -0.25,
        `
          and>contraction>article and>contraction>other and>number>preposition and>number>unit and>other>other
          and>pronoun>auxiliary and>pronoun>other and>verb>article and>verb>other and>verb>preposition
          and>verb>pronoun article>kit>other article>kit>preposition article>manner>other article>opener>article
          article>other>and article>other>auxiliary article>other>because article>other>ing article>other>kit
          article>other>opener article>other>part article>other>preposition article>other>pronoun
          article>other>unit article>part>and article>part>ing article>part>manner article>part>other
          article>part>part article>part>verb auxiliary>ing>preposition auxiliary>manner>other
          auxiliary>never>other auxiliary>number>other auxiliary>number>unit auxiliary>other>other
          auxiliary>other>preposition auxiliary>preposition>article auxiliary>pronoun>other
          because>article>auxiliary because>contraction>article because>contraction>manner
          because>contraction>never because>contraction>preposition because>pronoun>verb contraction>article>other
          contraction>other>other contraction>other>preposition contraction>other>pronoun ing>and>article
          ing>and>opener ing>and>other ing>article>auxiliary ing>article>other ing>article>part ing>opener>other
          ing>preposition>pronoun ing>preposition>verb ing>verb>article ing>verb>verb kit>and>article kit>and>verb
          kit>article>ing kit>auxiliary>article kit>because>article kit>opener>other kit>other>and
          kit>preposition>contraction kit>verb>other manner>and>contraction manner>and>manner
          manner>because>article manner>because>other manner>manner>article manner>manner>manner
          manner>manner>other manner>manner>part manner>number>unit manner>opener>opener manner>opener>pronoun
          manner>part>verb manner>preposition>article manner>preposition>number manner>preposition>pronoun
          manner>pronoun>auxiliary manner>verb>and never>other>other never>verb>preposition number>and>contraction
          number>and>pronoun number>article>part number>contraction>auxiliary number>number>part
          number>other>because number>other>opener number>other>preposition number>other>unit
          number>preposition>article number>preposition>other number>unit>and number>unit>preposition
          number>verb>preposition opener>and>manner opener>and>never opener>and>opener opener>contraction>article
          opener>number>unit opener>opener>opener opener>opener>part opener>part>preposition
          opener>preposition>article opener>preposition>number opener>verb>pronoun other>and>article other>and>kit
          other>and>manner other>and>opener other>and>other other>auxiliary>auxiliary other>auxiliary>preposition
          other>because>auxiliary other>because>number other>ing>pronoun other>kit>and other>kit>auxiliary
          other>manner>preposition other>manner>verb other>never>verb other>number>number other>other>auxiliary
          other>other>because other>other>contraction other>other>manner other>other>never other>other>verb
          other>part>article other>part>auxiliary other>part>pronoun other>part>verb other>preposition>and
          other>preposition>article other>preposition>ing other>preposition>verb other>pronoun>article
          other>pronoun>opener other>pronoun>preposition other>verb>auxiliary other>verb>contraction other>verb>ing
          other>verb>number part>and>manner part>article>unit part>because>pronoun part>contraction>auxiliary
          part>contraction>pronoun part>manner>verb part>never>preposition part>opener>manner part>other>manner
          part>other>other part>part>other part>preposition>article part>preposition>number part>preposition>other
          part>preposition>part part>preposition>verb part>pronoun>other preposition>and>part preposition>and>verb
          preposition>article>kit preposition>article>manner preposition>article>opener preposition>article>other
          preposition>article>part preposition>article>preposition preposition>contraction>ing
          preposition>contraction>opener preposition>contraction>verb preposition>ing>preposition
          preposition>manner>and preposition>manner>number preposition>manner>other preposition>number>manner
          preposition>opener>and preposition>opener>number preposition>other>because preposition>other>opener
          preposition>other>pronoun preposition>part>part preposition>part>verb preposition>preposition>article
          preposition>pronoun>and preposition>pronoun>opener preposition>verb>because pronoun>and>preposition
          pronoun>auxiliary>other pronoun>auxiliary>pronoun pronoun>contraction>ing pronoun>contraction>opener
          pronoun>other>article pronoun>other>other pronoun>preposition>other pronoun>preposition>preposition
          pronoun>preposition>pronoun pronoun>verb>number unit>and>because unit>article>opener unit>manner>because
          unit>never>verb unit>opener>article unit>opener>opener unit>opener>other unit>other>article
          unit>other>contraction unit>other>manner unit>other>other unit>preposition>article
          unit>preposition>because unit>preposition>other unit>preposition>verb verb>and>kit verb>article>number
          verb>article>part verb>article>verb verb>contraction>article verb>manner>preposition verb>manner>verb
          verb>number>kit verb>number>part verb>other>and verb>other>because verb>other>preposition
          verb>preposition>article verb>preposition>number verb>preposition>other verb>preposition>pronoun
          verb>pronoun>preposition
        `,
      ],
      [
        -0.5,
        `
          article>other>other article>part>preposition auxiliary>verb>article because>contraction>other
          because>other>pronoun because>pronoun>auxiliary ing>manner>article ing>preposition>other
          kit>other>preposition kit>preposition>other kit>verb>preposition manner>other>verb number>and>article
          number>article>other number>because>pronoun number>number>other number>number>preposition
          number>part>preposition number>verb>article opener>and>other other>and>number other>auxiliary>number
          other>auxiliary>other other>because>other other>contraction>ing other>number>and other>number>pronoun
          other>opener>never other>opener>preposition other>opener>pronoun other>opener>verb other>other>part
          part>and>and part>other>and part>other>verb part>verb>because preposition>and>number
          preposition>and>preposition preposition>because>contraction preposition>other>and
          pronoun>because>contraction unit>and>pronoun unit>because>pronoun unit>manner>preposition
          unit>verb>pronoun verb>and>verb verb>number>unit
        `,
      ],
      [-0.75, 'kit>and>preposition manner>and>other part>and>part part>contraction>other'],
    ],
    'kind-before2': [
      [
        -0.25,
        `
          adverb amount and but contraction did do ed end est have hello ing kit modal never owned particle verb
        `,
      ],
      [-0.5, 'because person'],
    ],
    'kind-after2': [
      [0.5, 'owned'],
      [
        -0.25,
        `
          adjective adverb and because but contraction day did do end est have kit order part praise then verb want
        `,
      ],
      [-0.5, 'hello or'],
    ],
    kinds: [
      [1, 'order>article'],
      [
        0.75,
        `
          amount>owned be>verb ing>verb kit>adjective kit>hello kit>number noun>do noun>noun noun>part noun>then
          number>verb other>contraction part>amount part>part particle>kit particle>other pointer>verb
          preposition>particle s>number
        `,
      ],
      [
        0.5,
        `
          adjective>adjective adjective>article adjective>hello adjective>ing adjective>never adjective>particle
          adverb>never adverb>number amount>do amount>part article>contraction article>object day>hello did>verb
          do>because do>contraction does>contraction does>or does>part ed>contraction er>because er>part er>praise
          er>verb hello>pointer hello>s ing>contraction kit>article kit>part kit>praise kit>verb modal>subject
          noun>adjective noun>adverb noun>article noun>number noun>or noun>verb number>contraction number>other
          order>and order>other other>adjective other>hello other>never other>part part>article part>other
          part>subject particle>adjective particle>ing particle>number particle>part particle>verb person>article
          person>number person>subject pointer>number praise>other preposition>kit preposition>verb s>ing s>other
          subject>ing subject>number subject>owner unit>adjective unit>amount unit>do unit>other verb>order
          verb>other verb>verb want>contraction
        `,
      ],
      [
        0.25,
        `
          adjective>contraction adjective>number adjective>order adjective>pointer adjective>then adjective>verb
          adverb>adverb adverb>noun adverb>order amount>adverb amount>amount amount>kit amount>owner article>and
          article>subject be>hello because>because because>does because>er because>kit because>noun
          compared>because compared>other day>adjective day>verb did>and did>contraction do>part do>particle
          does>adjective does>article does>noun ed>adjective ed>never ed>part ed>subject ed>verb hello>adverb
          hello>ed hello>ing hello>kit hello>other hello>praise ing>adjective ing>adverb ing>does ing>ed ing>hello
          ing>then kit>kit kit>never modal>number never>amount never>subject noun>amount noun>ing noun>owner
          number>adverb number>because number>never number>number number>pointer number>subject number>then
          order>part order>to other>article other>compared other>do other>or other>praise other>verb owner>hello
          part>never part>number part>person part>then particle>article particle>contraction particle>never
          particle>noun particle>particle particle>subject particle>unit pointer>adverb pointer>and pointer>other
          pointer>s praise>contraction preposition>adverb preposition>because preposition>er preposition>order
          preposition>person s>adverb s>noun s>then s>verb subject>article subject>contraction subject>hello
          subject>s then>preposition to>hello unit>adverb unit>never unit>noun unit>owner unit>part unit>subject
          verb>and verb>does verb>never verb>or verb>praise
        `,
      ],
      [
        -0.25,
        `
          adjective>amount adjective>does adjective>of adjective>unit adverb>adjective adverb>article adverb>kit
          adverb>praise amount>ing amount>of and>adjective and>hello and>never and>noun and>other and>part
          and>particle and>subject article>adjective article>amount article>er article>ing article>kit article>noun
          article>number article>other article>part article>particle article>praise article>s article>unit
          be>adjective be>ing be>never be>other be>preposition because>adjective because>article because>owned
          because>owner compared>kit compared>preposition compared>verb contraction>adjective contraction>adverb
          contraction>article contraction>did contraction>have contraction>ing contraction>number contraction>other
          contraction>praise contraction>preposition contraction>subject day>and did>adjective did>because
          did>number did>preposition did>subject do>never do>pointer do>subject does>because does>hello does>never
          does>number does>preposition does>verb ed>adverb ed>number er>number er>pointer er>preposition est>verb
          have>article have>subject hello>contraction hello>do hello>hello ing>amount kit>does kit>have
          kit>preposition modal>do never>ing never>other never>verb noun>be noun>does noun>of noun>particle
          noun>pointer noun>preposition noun>s noun>unit number>be number>hello number>of number>or object>article
          object>because object>particle of>article of>other of>subject order>amount order>but order>kit
          order>number order>owned order>particle order>subject order>verb other>did other>kit other>order
          other>other other>unit owned>adjective owned>adverb owned>ing owned>other owned>verb owner>adjective
          owner>kit owner>number owner>other owner>part part>be part>compared part>ed part>noun part>order
          part>particle part>preposition part>s part>to part>unit particle>be particle>does particle>of
          particle>preposition particle>to person>part person>preposition pointer>kit pointer>noun pointer>subject
          praise>and praise>hello praise>noun praise>person praise>subject preposition>amount preposition>article
          preposition>be preposition>ing preposition>object preposition>other preposition>owner preposition>to s>do
          s>ed s>order s>subject subject>amount subject>be subject>compared subject>did subject>do subject>does
          subject>ed subject>modal subject>praise subject>verb subject>want then>number then>verb to>adjective
          to>article to>other to>part unit>of unit>preposition verb>adverb verb>amount verb>compared verb>ed
          verb>ing verb>object verb>owner verb>particle verb>preposition
        `,
      ],
      [
        -0.5,
        `
          adjective>kit adjective>noun adjective>part adverb>particle and>contraction and>number and>then and>verb
          article>verb be>adverb be>number because>amount because>contraction because>never because>pointer
          because>subject contraction>never contraction>verb do>number hello>part hello>then ing>noun ing>particle
          ing>preposition kit>adverb kit>and kit>pointer modal>verb noun>and noun>order noun>praise number>s
          number>unit object>preposition of>number order>unit other>adverb other>does other>object owned>article
          part>does part>ing person>verb pointer>part praise>amount preposition>number s>because subject>adverb
          to>number unit>ing verb>adjective verb>because
        `,
      ],
      [-0.75, 'other>noun other>s owned>never to>verb unit>because'],
    ],
    names: [
      [1, 'inside>first'],
      [0.5, 'first>first inside>no'],
      [0.25, 'first>no no>first'],
      [-0.25, 'no>no'],
      [-0.75, 'first>inside inside>inside'],
    ],
    since: [
      [-0.25, '11'],
      [-0.5, '1'],
    ],
    'since-class': [
      [0.5, '2>ly 2>verb 4>never 6>never 7>never'],
      [0.25, '1>and 1>opener 3>never 5>never 6>verb 7>and 7>because'],
      [
        -0.25,
        `
          1>article 1>because 1>ing 1>preposition 1>pronoun 2>auxiliary 2>because 2>ing 2>manner 2>number
          2>preposition 2>unit 3>auxiliary 3>because 3>preposition 4>opener 4>other 4>preposition 4>pronoun 4>unit
          5>ly 5>preposition 5>unit 6>auxiliary 6>ing 6>kit 6>manner 7>auxiliary 7>ing 7>other 7>unit
        `,
      ],
      [
        -0.5,
        `
          1>auxiliary 1>manner 1>never 1>other 1>part 1>unit 1>verb 3>opener 5>opener 7>kit 7>opener
        `,
      ],
    ],
    first: [
      [0.75, 'manner>manner number>number'],
      [
        0.5,
        `
          article>because article>ly because>kit contraction>contraction contraction>ly number>and number>ing
          other>never preposition>and pronoun>contraction verb>never verb>verb
        `,
      ],
      [
        0.25,
        `
          article>contraction article>pronoun auxiliary>contraction because>because because>verb
          contraction>because ing>and ing>kit ing>preposition kit>because kit>never kit>part ly>and manner>because
          manner>kit never>contraction never>pronoun opener>because opener>opener opener>other opener>preposition
          opener>unit part>and part>kit part>never part>number part>part part>verb preposition>auxiliary
          preposition>never preposition>preposition unit>opener
        `,
      ],
      [
        -0.25,
        `
          and>auxiliary and>manner and>part and>preposition and>unit and>verb article>ing article>manner
          article>number article>opener article>other article>part article>preposition article>unit article>verb
          auxiliary>ing auxiliary>manner auxiliary>other auxiliary>pronoun auxiliary>verb because>contraction
          because>number because>pronoun contraction>ing contraction>other contraction>preposition ing>article
          ing>auxiliary ing>manner ing>other ing>verb kit>and kit>auxiliary kit>other kit>pronoun manner>article
          manner>auxiliary manner>number manner>part never>auxiliary never>other never>part never>preposition
          number>kit number>manner number>other number>unit opener>and opener>never other>ly other>number
          other>part other>pronoun part>article part>auxiliary part>manner part>preposition preposition>manner
          preposition>opener preposition>part preposition>pronoun pronoun>article pronoun>kit pronoun>ly
          pronoun>manner pronoun>number pronoun>other unit>because unit>number unit>preposition unit>pronoun
          verb>article verb>auxiliary verb>number verb>opener verb>other verb>preposition
        `,
      ],
      [
        -0.5,
        `
          article>auxiliary article>kit auxiliary>preposition because>ing because>ly because>never
          because>preposition contraction>manner contraction>unit kit>preposition manner>opener number>pronoun
          other>unit part>opener preposition>contraction preposition>ing pronoun>ing pronoun>opener pronoun>part
          pronoun>unit pronoun>verb verb>ly
        `,
      ],
      [-0.75, 'verb>because'],
    ],
    'first-word': [
      [0.75, 'actually nine reds right run to'],
      [
        0.5,
        `
          alright ask bars before bend big brisk build carol collars denise drag extend good grab hi high hinge
          hiya in jab knuckles kyle loose no nose okay on overhead pause please rise rock safety side sixteen
          slowly squash standing steady straighten swing uh um well
        `,
      ],
      [
        0.25,
        `
          12 25 40 again against all ankle any anyone awful band bear bending bicep blues body brace building burn
          by calves chalk's climbers coats confident couple crawl cross curl drops ear elbow enjoy every exercise
          face flat float foot forearms forehead's front full hamstring hamstrings haven't here hey hollow ignore
          inhale instead jean jog less lighter lock lovely march marged more oh one operated palm propped quiet
          raffle's rate ratio ready righto same sat send seven shoes sixty skip small sock soles somebody's sore
          squats stagger staying stroll support ten's thirteen thursday's tin's tingling up wall want what's which
          while wide wobbling's wraps wrists yes
        `,
      ],
      [
        -0.25,
        `
          35 5 a add after aim ankles arms around as avoid balance barre belly's bent blow bottom breath breathing
          bums bye can careful chat check clock's comfortable crease crown cushion dead depends do double down
          easiest either everything exhale fast feel feet finally find fists flatten flip found from funny got grip
          halo hand he he's heal heavier hike hiss hop house hover i i'd i'm inner isometric kick l lead load mini
          muscle next nobody's nothing odds off onto open opposite or out peel pretty prop punch put quicker quit
          rear resist rest roll ron's rotate running save scoot screw shaky's she she's shift shins shorten shuffle
          sigh single skin slow smaller snap some somebody something sort stack statues step stick still stop
          straightening strap stretch surface take takes tattie teasers tell that then there's these they've this
          thread tidy till toe toes tops trace trembling's tss tummy turn use we we're weight when where whose work
          wring y'all years you you'll
        `,
      ],
      [
        -0.5,
        `
          2 an bird but chin drink except five forehead go grow hip i'll i've imagine is it leave let like little
          loop lower make maybe mine move my never now only park people pick press pretend rack seated see set
          squeeze stay sure swap thanks the they thighs though tilt try warm we've welcome whatever who
        `,
      ],
      [-0.75, 'because er give other with zip'],
    ],
    'first-kind': [
      [
        0.75,
        `
          hello>hello kit>verb never>contraction number>number order>article part>owned verb>never verb>then
        `,
      ],
      [
        0.5,
        `
          adjective>adjective adjective>do adjective>number adjective>preposition adverb>and adverb>ing
          adverb>order adverb>pointer article>object article>or be>article because>hello contraction>be
          contraction>s did>subject have>contraction hello>adjective hello>and hello>because hello>s hello>verb
          never>s noun>hello noun>noun noun>verb number>ing number>or or>because order>order order>particle
          other>never other>owner owned>kit part>contraction part>other part>then particle>noun particle>order
          particle>particle person>adverb pointer>preposition praise>adverb praise>contraction praise>other
          praise>praise preposition>and preposition>or preposition>particle s>article s>kit s>particle s>verb
          then>hello then>then to>article verb>contraction
        `,
      ],
      [
        0.25,
        `
          adjective>contraction adjective>hello adjective>other adjective>then adjective>verb adverb>adverb
          amount>adverb amount>amount amount>contraction amount>then amount>verb and>hello article>and
          article>article article>because article>contraction article>number be>because because>do because>kit
          because>never because>verb but>because but>preposition compared>or contraction>contraction
          contraction>have contraction>modal contraction>praise do>amount do>contraction do>number do>or
          does>article does>does ed>contraction er>because er>verb have>article have>part hello>contraction
          hello>kit hello>owned hello>pointer ing>and ing>subject kit>est kit>never kit>s kit>subject never>adverb
          noun>adjective noun>adverb noun>never noun>then number>and number>but number>do number>have number>praise
          object>subject or>and or>pointer or>subject order>other order>part order>preposition other>and
          other>contraction other>ing other>modal other>or other>subject owned>hello owned>other owned>owned
          owner>amount owner>because owner>other owner>praise part>compared part>did part>or part>part part>person
          part>subject particle>did particle>do particle>preposition person>part pointer>hello pointer>particle
          praise>be praise>ed praise>subject praise>verb preposition>never preposition>order preposition>verb
          s>contraction s>ing s>number s>s subject>but subject>contraction subject>do subject>or then>because
          then>number unit>noun verb>have verb>verb want>subject
        `,
      ],
      [
        -0.25,
        `
          adjective>amount adjective>because adjective>but adjective>ed adjective>ing adjective>modal adjective>or
          adjective>owned adjective>part adjective>particle adverb>amount adverb>hello adverb>number adverb>other
          adverb>part amount>adjective amount>part amount>preposition amount>subject and>amount and>be and>because
          and>compared and>did and>do and>does and>part and>particle and>then article>adjective article>do
          article>ing article>pointer article>preposition article>unit article>verb be>or because>be
          because>contraction because>does because>ing because>object because>or because>particle because>praise
          because>preposition because>subject because>to but>and but>contraction compared>verb contraction>and
          contraction>did contraction>do contraction>ed contraction>er contraction>kit contraction>of
          contraction>preposition contraction>to contraction>unit contraction>want day>contraction do>and do>hello
          do>ing do>never do>preposition does>hello ed>article have>and have>subject hello>be hello>do hello>does
          hello>never hello>number hello>person ing>adjective ing>but ing>verb kit>adverb kit>hello kit>owner
          never>hello never>never never>part never>particle never>preposition noun>article noun>do noun>number
          noun>or noun>owner noun>praise number>amount number>of number>order number>pointer or>other
          or>preposition order>amount order>be order>kit order>never order>noun order>verb other>adverb other>does
          other>object other>order other>part other>s other>verb owned>adjective owned>and owner>and owner>article
          owner>noun owner>pointer owner>s part>amount part>be part>because part>hello part>order part>particle
          part>preposition part>to part>unit particle>adjective particle>amount particle>contraction particle>other
          particle>part particle>subject particle>then particle>verb person>number pointer>and pointer>noun
          pointer>other praise>amount praise>because praise>noun praise>order praise>owner praise>part
          preposition>ing preposition>other preposition>part preposition>subject s>do s>never s>or
          subject>adjective subject>adverb subject>article subject>be subject>did subject>does subject>ed
          subject>have subject>ing subject>kit subject>never subject>noun subject>of subject>order subject>owner
          subject>part subject>praise subject>preposition subject>to subject>want then>adjective then>article
          then>subject unit>and unit>never verb>adverb verb>amount verb>article verb>compared verb>do verb>ed
          verb>kit verb>number verb>object verb>of verb>or verb>owned verb>owner verb>particle verb>preposition
          verb>s verb>subject verb>to verb>unit verb>want want>article
        `,
      ],
      [
        -0.5,
        `
          adjective>noun adjective>unit adverb>adjective amount>article article>be article>kit be>subject
          because>and contraction>adverb contraction>ing contraction>noun contraction>particle hello>other
          hello>then kit>particle kit>preposition never>or noun>because noun>contraction noun>other
          noun>preposition number>be number>kit number>noun number>unit other>number owner>preposition
          part>adjective part>does part>s pointer>part preposition>contraction s>preposition subject>number
          subject>pointer then>particle then>verb unit>number verb>and verb>because verb>hello
        `,
      ],
      [-0.75, 'hello>noun order>contraction order>subject'],
    ],
    'kind-since': [
      [0.75, 'owned>4'],
      [0.5, 'adjective>5 hello>1 hello>3 kit>7 or>5 part>4 s>2 s>4 to>2'],
      [
        0.25,
        `
          adjective>2 adverb>2 adverb>4 amount>3 amount>6 article>5 be>7 compared>2 contraction>6 did>5 does>1 er>3
          er>4 have>3 hello>2 kit>2 kit>6 never>7 number>1 number>4 order>2 order>3 order>5 other>2 other>3 owned>5
          part>3 part>5 particle>3 particle>4 particle>6 particle>7 praise>1 praise>2 praise>6 s>1 s>7 to>3 want>1
          want>2
        `,
      ],
      [
        -0.25,
        `
          adverb>6 and>1 and>3 and>4 article>2 be>3 be>5 because>2 because>3 but>6 compared>3 do>2 do>5 do>7 does>4
          does>7 est>2 have>1 hello>4 ing>1 ing>5 never>1 never>4 noun>1 noun>4 noun>7 number>2 or>1 or>4 order>4
          order>6 other>7 owner>1 part>7 person>3 praise>4 praise>5 subject>2 subject>3 subject>4 subject>5 then>1
          then>3 unit>7 verb>1 verb>3 verb>6
        `,
      ],
      [
        -0.5,
        `
          adjective>1 adverb>1 adverb>7 amount>2 amount>5 article>3 article>6 compared>1 contraction>1
          contraction>2 hello>5 kit>1 kit>5 never>2 number>6 or>2 order>1 order>7 other>4 owned>1 owned>2 owner>2
          owner>3 owner>4 part>1 person>1 pointer>2 pointer>3 pointer>4 preposition>1 subject>1
        `,
      ],
      [-0.75, 'amount>1 particle>1 unit>1'],
    ],
    'first-words': [
      [1, "don't>keep in>out out>in two>one"],
      [
        0.75,
        `
          a>a don't>i feet>sit i>before if>hands if>if if>stop keep>keep one>one put>heel so>and then>like
          two>three
        `,
      ],
      [
        0.5,
        `
          all>all and>eight and>fold and>i'll and>not and>please and>push and>so and>there and>what and>with
          band>and bend>like both>feet breathe>breathe breathe>i breathe>out breathe>you've bring>and change>and
          cross>step do>every don't>breathe don't>press don't>put don't>ring don't>there's down>up drop>push
          ease>don't feel>where feet>toes first>the float>and for>for four>five four>three front>if go>if
          hands>feet hands>lift hands>squeeze hold>and i'm>you i>so if>do if>five's if>go if>hold if>just if>let
          if>march if>on if>rest if>set if>sit if>take is>the it's>is it's>it's it's>so it's>there keep>don't
          keep>good keep>like keep>no knee>and knees>sit last>make lift>hold long>like mind>the my>he no>and
          no>just no>me no>no not>and not>each now>on one>back one>go one>slow one>two or>if or>you press>breathe
          pull>and sit>no slide>under slow>four small>up so>between so>fine start>in take>toes that's>i that's>that
          the>or the>the then>i'll then>rows then>so then>then then>uh then>without there's>keep there's>number
          think>like this>it's this>out this>so this>we three>four three>with twenty>each up>down up>knee up>up
          use>and use>or walk>come we'll>no when>the while>i you'll>and you're>look you>the
        `,
      ],
      [
        0.25,
        `
          40>in 8>9 a>i a>in a>same a>sharp a>so a>up alright>welcome and>5 and>all and>an and>big and>both
          and>bring and>cushion and>everything and>farmer's and>fifteen and>first and>for and>from and>go and>hang
          and>i and>i'd and>i'm and>just and>let and>me and>nice and>other and>overhead and>park and>press and>pull
          and>quit and>right and>roll and>rows and>small and>steady and>swap and>there's and>they and>two and>use
          and>you've arms>if arms>lean arms>straight arms>the as>and as>as as>then ask>your back>feet back>hands
          back>on back>that bar>elbows bar>hands because>i'm before>every bell>feet bend>if bend>keep bend>then
          big>hold big>in big>little both>it's bottom>feet bottom>good brace>sit breath>out bridges>then
          bring>change build>hold but>in but>so chest>and come>hands come>shut count>one crawl>back do>go do>it
          do>or do>twice don't>chest don't>i've don't>if don't>just don't>long don't>out don't>rest don't>shoulders
          don't>stay don't>take don't>three don't>you down>and down>if draw>hold drive>the drop>then eight>in
          eight>twelve elbows>bar elbows>not every>and every>you feet>about feet>lift feet>like feet>stand
          fifteen>then find>the first>second five>five five>i five>if five>six five>top for>this front>back
          get>have get>take go>breathe go>one go>squats good>everybody good>good good>water grab>the grab>you
          hands>a hands>arms hands>as hands>breathe hands>elbows hands>jump hands>on hands>one hands>or hang>and
          hang>before have>have have>wiggle he>he heel>heel heel>up hello>and hips>up hiya>come hold>down
          hold>elbows hold>feet hold>hands hold>thumbs hold>um i'd>but i'll>then i'll>you i've>if i've>it i've>my
          i>can i>didn't i>have i>i i>i'm i>if i>in i>just i>no i>out i>that's i>think i>thirty i>those i>um
          i>we'll i>years if>balance if>bend if>double if>er if>hard if>have if>he's if>i'm if>leave if>lie if>my
          if>only if>slide if>smaller if>so if>stay if>stick if>straight if>straighten in>for in>two inhale>exhale
          it's>calf it's>call it's>chin it's>forty it's>in it's>it it's>like it's>make it's>move it's>on it's>the
          it's>this it's>we've it's>where it>does it>don't it>if it>it jump>arms jump>lock jump>stand just>then
          keep>it keep>little keep>you knee>if knees>a knees>or knees>push knees>that's last>back last>minute
          last>the lean>walk legs>sit let's>and let>keep let>like let>onto let>with lie>arms lie>forehead lift>like
          lift>lower lift>so lift>then lighter>or like>don't long>back look>and look>the lose>if lovely>and
          lower>then make>and me>i morning>come my>i've next>go next>on next>the nice>brisk no>it no>it's no>let
          no>you're nose>your not>from not>i not>six not>that now>hip now>hold now>one now>that's now>up
          off>presses on>elbow one>arms one>hold one>just one>most one>quicker one>swap one>swing one>the
          operated>heel opposite>opposite or>and or>don't or>no or>this or>whatever pain>if pinch>and please>for
          press>then pretend>and pull>down pull>elbows pull>lower push>go push>hold push>into push>you put>you
          quick>and reach>then remember>and rest>then rest>you right>arms right>hips right>left right>second
          roll>back roll>head round>last same>and same>no same>same same>three second>heel see>bring seven>eight
          she>and shove>and side>leg side>near side>one sip>blow sit>feet sit>if sit>legs sit>one sit>then six>and
          six>by six>seven sixty>and slide>arms slide>breathe slide>shoulder slow>a so>drills so>four so>here so>it
          so>leg so>next so>rings so>somebody so>swings so>the so>tidy so>top so>twice so>um so>what's so>where
          so>you somebody's>is somebody>and somebody>ask squash>and squat>go squat>up squeeze>press stand>don't
          stand>hips stand>hold stand>knee standing>the stay>that steady>this step>don't step>no step>then stop>for
          stop>put straight>down straight>no straps>so swing>the take>this ten>rest ten>small ten>ten ten>that's
          that's>come that's>do that's>if that's>it's that's>lovely that's>next that's>put that's>rack that's>rest
          that's>so that's>stop that's>that's that>right that>see that>turn the>back the>bring the>four the>if
          the>ignore the>some the>three then>five then>goblet then>legs then>same then>shoulders then>straight
          there's>don't there's>i've there's>the third>the thirty>thirty this>for three>a three>let three>okay
          three>two to>the toes>facing top>if tuck>round turn>and turn>as turn>right turn>step two>a two>lovely
          two>or up>round up>slowly up>two wait>up walk>and walk>hands walk>no watch>it watch>they we'll>and
          we'll>take we've>and we>for we>ten we>the we>we weight>that well>nearly which>it's which>on wrap>and
          wrists>make you'd>a you'd>the you'll>so you're>heels you've>and you've>i you>after you>by you>check
          you>don't you>in you>it's you>let's you>like you>so you>you your>if your>keep
        `,
      ],
      [
        -0.25,
        `
          10>and a>feet a>let a>you actually>no all>the and>3 and>about and>as and>back and>before and>don't
          and>legs and>lift and>like and>no and>out and>put and>rest and>sit and>slow and>ten and>that's and>then
          and>this and>up and>walk and>we'll as>draw before>a bend>and both>and breathe>all breathe>ribs but>and
          calf>hands chin>and come>the did>the do>and do>not don't>a don't>bring don't>drop don't>hold don't>it's
          don't>like don't>or don't>so don't>that's don't>up down>two drag>hand eight>if eight>is eight>ten
          elbows>shoulders elbows>step feet>a feet>tap five>four flat>or flatten>and forty>and forty>five four>and
          four>eight go>and go>that's hands>the have>and he's>and hold>if i'll>and i'll>i've i've>and i've>i
          i>because i>five i>once i>that i>the i>three i>two i>who i>you're if>as if>breathe if>bring if>find if>in
          if>it if>keep if>not if>or if>shoulder if>the if>there if>wait in>down is>or it's>one it's>turn
          it's>you'll it>or jump>and jump>or just>only just>the keep>and keep>close keep>if keep>the keep>two
          knee>don't knees>don't knees>hips knees>toes last>i lean>hold let>and let>do let>go lie>then
          lovely>lovely make>or my>and nice>and ninety>rest no>please now>i've now>like now>we off>go oh>that's
          okay>second okay>the one>breathe one>on one>push one>stand one>then peel>one pick>two pull>don't
          push>come put>it's reach>and reverse>and right>hand right>next right>sit right>the right>then same>as
          scoot>close shins>and shins>no side>on sit>a sit>bones six>i slow>that's so>breathe so>each so>i so>if
          so>one so>put so>you've squeeze>and squeeze>then step>and step>hang step>if stop>and sure>and swing>leg
          take>don't tall>like tattie>i'm ten>and ten>each ten>eight ten>nine thank>you that's>i'm that's>thirty
          the>a the>don't the>lean the>two then>it's then>with there's>so there>and thirty>facing this>and
          twenty>the two>down two>it two>then two>you um>one up>get up>hands up>out we'd>and we've>so we>and
          what's>everybody while>you you'll>when you>a you>every you>if you>stop
        `,
      ],
      [
        -0.5,
        `
          and>because and>hold and>hug and>if and>one and>three arms>like because>and breathe>and cross>and
          don't>it don't>roll feet>and feet>hands five>three five>two forearm>elbows hands>shoulders i'm>and i>it's
          if>and if>i if>lift if>shuffle it's>and it's>that leave>and my>i okay>and okay>hello one>three push>like
          step>one that's>you the>i there's>and three>go three>one we>so when>and you>that's
        `,
      ],
      [-0.75, "five>one if>put if>you've"],
    ],
    before2: [
      [0.75, '30 after bad collars each full leaning little ring said'],
      [
        0.5,
        `
          20 already backside behind bending big boots both chin cleans cones days dead doing eighty force from
          hanging hat hate haven't hi his impact isn't lateral lowest mats mean months nearly neck's nine o'clock
          piece pockets pressure roll rugby say seven short small smaller sock soft station tea these third today
          too twice was we
        `,
      ],
      [
        0.25,
        `
          1 90 actually ankle answer any banging barbecue barbell begin bicep branch breastbone breathe building
          calf carpet chain cheat chipper clams climbing coming confident cooked cried crisp cross da dad dip disc
          draw drifting dull during elbow exercise fast feeling feels finger finish first five fold forget form
          fourteen fun gather goal going grabs great hangers heart her high hinge hopeless idea ignore imaginary
          it'll jacks jerking jog jumps keeps kettle kilos knock leaves lengths lighter lights literally loosen
          lose main march match mate meet mind mouth nearer neck needles nips number oak opened opposite option
          order overhead own pair point press pressed priya proud puff quick quiet rack recording rock rocked
          rotator running rush russian sand see shade shorten shouldn't slam softly soles squat star stick swing
          swings teaches teeth terrible that'll thirty three times tracks trained trainers travelling tummy uh walk
          wants warm water weights went were wheels won't would yank years yourselves
        `,
      ],
      [
        -0.25,
        `
          10 100 25 7 a always and anyone asked baby back bar be bins bone bottom bring bum but called can car
          carrying chair child's clock's could count crawl creeping cushion did do dogs down drive drop dumb ease
          easier eight elbows er ever everybody everybody's fall fancy far fingers fingertips flexor floor getting
          give goblet had hall hamstring's hard has head hills hip's hips holding house how its job kick kitchen
          knee knees lamp least let's light like line long looking lots marged mat minds minute minutes month most
          need next nose one only onto open outside pain parking planks pretty push put race raises really reps
          rest romanian room row seated sets she shin shoe shopping shouting side sideways sit sled sleep smooth so
          somebody someone sort spikes started starts stretch strides stroller swap take talk tall tattie tell than
          their there there's thing things through till tonight tray tree tuck until us use view watching week's
          welcome what when where whoever's whole will with without work written yes
        `,
      ],
      [
        -0.5,
        `
          12 45 8 about again aren't arms as away been before between call dives don't done eleven flat goes hands
          have he heal here i i'll i've if instead just let lot lower mailbox make me ninety okay old operated
          please proper rings set should sides slow think thousand told twist um we'll while
        `,
      ],
      [-0.75, 'stay top'],
    ],
    'word-class': [
      [1, 'on>number so>other'],
      [
        0.75,
        `
          10>preposition flat>other it>verb on>verb right>other these>other today>other up>verb
        `,
      ],
      [
        0.5,
        `
          2>number ache>preposition again>and arms>verb away>verb back>article belly>and bent>other
          breathe>contraction breathing>pronoun chair>other did>preposition done>verb down>article down>other
          down>part even>other five>article five>verb floor>other go>opener heavy>verb high>preposition
          hip>preposition hips>manner hips>part in>and in>verb is>verb it>contraction it>pronoun knee>verb
          kneecap>other know>preposition lad>other land>other left>verb leg>number like>number mat>contraction
          morning>other no>number no>other no>pronoun okay>other on>contraction one>article one>ing one>manner
          out>article out>number out>part plank>part right>number rings>because second>article shoulder>preposition
          side>number side>verb sides>verb skips>number stop>article straight>verb tall>other that>contraction
          then>preposition there>other thing>preposition through>other up>number up>opener way>because week>and
        `,
      ],
      [
        0.25,
        `
          3>number 4>other again>number again>other again>preposition apart>preposition arm>other arm>verb arms>ly
          arms>number arms>part back>never back>number back>pronoun backs>other balance>auxiliary belly>preposition
          belly>verb bench>other bit>because board>preposition bottom>other box>article breath>other
          breathing>manner breaths>and breaths>preposition can>manner can>opener chair>because chair>number
          chest>verb chin>part coming>contraction curls>preposition did>article door>other down>contraction
          down>never down>verb drink>verb each>article each>verb ear>preposition easy>verb eight>and eight>never
          everybody>verb fence>verb fifteen>and find>article fine>other fingers>preposition finish>article
          first>and first>part first>preposition five>manner floor>manner floor>preposition floor>pronoun
          foot>article foot>number foot>verb forward>part forward>preposition four>and four>opener go>article
          go>part goes>and good>contraction good>number grip>article hamstring>other hand>other head>opener
          heel>part height>other height>part hello>article here>contraction high>other hold>verb home>article
          in>manner in>number in>part in>pronoun is>pronoun it>kit it>never it>part knees>and know>article
          left>other leg>and leg>pronoun legs>and lift>article lift>preposition like>pronoun long>and lot>other
          low>and mat>preposition me>article me>contraction middle>contraction mind>article minute>verb minutes>and
          more>number morning>pronoun nice>opener nine>contraction no>contraction now>because now>pronoun
          off>contraction off>number off>other off>verb okay>preposition on>part once>preposition one>contraction
          one>preposition ones>other other>and over>other over>pronoun pair>and pause>and please>pronoun pull>verb
          quick>part rail>preposition raises>preposition reach>other ready>other rest>auxiliary rest>other
          right>unit round>and round>contraction round>opener seat>verb seconds>number set>because seven>and
          seven>number shoulders>and shoulders>part shoulders>preposition side>manner side>preposition sides>and
          sitting>preposition six>auxiliary six>other slow>because slowly>part spot>preposition squats>article
          squats>verb stand>and stand>article stand>because step>number stop>preposition swinging>contraction
          switch>verb tall>and ten>and ten>number that>manner that>verb them>and then>other there>number these>and
          thighs>and this>pronoun three>because three>opener times>and today>because today>verb toe>because
          toe>other toe>part toes>manner toes>never toes>verb together>verb top>and top>other top>verb towel>and
          turn>preposition twice>and two>part um>preposition up>other up>part waist>verb wall>and way>verb
          week>opener weight>auxiliary wide>and won't>verb work>number you>part
        `,
      ],
      [
        -0.25,
        `
          2>and 30>preposition 4>and 8>other a>kit a>manner a>number a>other a>part again>article again>verb
          all>article all>other and>and and>article and>auxiliary and>manner and>never and>opener and>part
          and>preposition and>pronoun ankle>other anybody>other are>ing are>other arms>and arms>other
          arms>preposition as>article as>contraction as>other as>pronoun at>article at>number at>other at>part
          away>and away>part baby>other back>opener back>preposition back>unit bar>preposition before>pronoun
          behind>pronoun behind>verb bell>verb belly>other bench>and bend>because bent>verb big>other big>part
          bottom>part breathe>preposition breaths>article breaths>manner bus>verb can't>verb can>other can>verb
          chair>verb comes>preposition cross>other curls>part day>because dead>manner dead>other dead>verb
          do>article do>number doing>article don't>other don't>verb done>other down>and down>because down>kit
          down>manner each>other eight>preposition eighty>number elbows>and even>because far>other feel>other
          feet>other feet>preposition fine>verb first>unit five>because five>contraction five>other
          flat>preposition flat>verb floor>article floor>because floor>contraction foot>other for>article
          four>because four>other front>number get>article get>other go>because go>manner goes>other
          going>preposition good>opener got>article got>number got>other half>article half>other hand>preposition
          hang>preposition heavy>number heavy>part heel>because heels>and hello>opener here>verb hi>other
          hips>preposition hips>verb hold>article hold>preposition how>other i>auxiliary i>other i>verb if>article
          if>contraction if>other if>pronoun in>article it's>other it>manner just>article just>other knee>because
          knee>other knees>manner know>contraction lane>number leg>auxiliary legs>manner legs>preposition
          let>opener level>number lift>number like>article line>verb little>verb look>preposition low>other
          lunges>and lunges>opener mat>article metres>and metres>number middle>part minute>and minute>preposition
          minutes>because minutes>opener minutes>preposition nice>and ninety>number no>ing not>article now>article
          now>part now>preposition now>verb of>article of>other of>pronoun off>article off>pronoun one>verb
          ones>preposition only>verb open>preposition opposite>part other>number other>verb out>because
          out>preposition over>and over>article percent>preposition phone>other piece>number plank>other
          pull>article quick>and quiet>part right>and rings>manner round>number rounds>preposition say>number
          says>number second>number second>other second>verb seconds>preposition seconds>pronoun see>article
          see>pronoun sets>preposition shoulder>contraction shoulder>verb slowly>other so>number sorry>preposition
          squats>opener station>number stay>verb step>preposition still>verb straight>and stretch>because
          take>number tea>other ten>manner thank>pronoun that's>article that>part the>kit the>number the>opener
          the>other the>part them>opener them>preposition then>number then>verb thigh>and thighs>verb thirty>number
          those>contraction three>preposition through>article till>contraction till>pronoun time>because
          times>article times>verb to>article to>auxiliary to>other to>part today>and today>auxiliary toes>other
          too>other tucked>preposition turn>and two>number wall>because wall>other wall>verb warm>preposition
          was>number water>other weeks>and weeks>other what>contraction what>pronoun while>contraction with>article
          with>number with>other you>auxiliary you>preposition your>number your>opener your>other your>part
        `,
      ],
      [
        -0.5,
        `
          a>verb about>number and>contraction and>number and>other and>verb bar>and box>and breath>and
          breath>preposition done>article foot>and for>number for>other forty>number go>preposition head>because
          hip>contraction hundred>and knee>contraction know>part last>number last>other leg>verb legs>verb
          little>other number>number of>number one>part out>manner plank>verb pretend>contraction right>part
          set>article shoulder>and shoulder>part shoulders>verb side>because side>contraction sit>verb
          straight>preposition ten>other the>verb tight>other time>pronoun times>number to>number twenty>number
          way>preposition we>verb week>number you>verb
        `,
      ],
      [-0.75, 'just>verb like>contraction to>verb'],
    ],
    'kind-closing': [
      [
        0.75,
        `
          adjective>kit because>hello hello>then object>adverb order>particle order>verb owner>unit part>adjective
          pointer>kit preposition>object to>subject
        `,
      ],
      [
        0.5,
        `
          adjective>adverb adjective>other amount>adjective amount>particle and>preposition article>does
          because>pointer compared>other contraction>adjective contraction>subject day>adjective did>because
          does>hello does>never ed>hello ing>other kit>order kit>particle kit>s never>never noun>adverb
          noun>because number>does number>particle of>noun of>number of>object of>pointer order>preposition
          order>subject other>adverb other>order other>person owned>adjective owner>noun owner>s part>particle
          particle>noun person>number praise>because praise>person preposition>day preposition>er preposition>other
          preposition>pointer preposition>then s>adverb s>other subject>er unit>pointer unit>praise verb>did
        `,
      ],
      [
        0.25,
        `
          adjective>er adjective>number adjective>person adverb>particle amount>do amount>order and>ed and>number
          article>amount article>day article>hello article>never article>unit article>verb be>adjective be>amount
          be>ed be>other be>pointer because>amount because>ing contraction>praise day>hello did>noun did>other
          do>amount do>hello does>adjective does>article does>noun does>particle ed>adjective ed>other ed>person
          er>adverb er>pointer est>noun have>object hello>hello hello>other hello>subject ing>amount ing>hello
          ing>praise never>amount never>be noun>do noun>other noun>s number>number number>praise number>s
          number>subject number>unit object>number object>other of>adjective of>ing of>subject or>because or>does
          or>noun order>kit order>unit other>amount other>er other>modal other>noun other>number other>object
          other>subject owned>kit owner>does owner>other part>noun part>s particle>adjective particle>number
          particle>particle particle>s person>kit pointer>amount pointer>hello pointer>particle pointer>unit
          praise>noun preposition>adjective preposition>s preposition>subject s>ed s>never s>noun subject>be
          subject>ed subject>then then>kit then>part to>noun to>object unit>compared unit>ing unit>kit unit>noun
          verb>adjective verb>hello verb>noun verb>person verb>preposition verb>want want>adverb want>verb
        `,
      ],
      [
        -0.25,
        `
          adjective>and adjective>contraction adjective>of adjective>owned adjective>pointer adjective>preposition
          adverb>and adverb>contraction adverb>number adverb>subject adverb>verb amount>be amount>because
          amount>number amount>of amount>subject amount>verb and>article and>because and>contraction and>never
          and>noun and>then and>unit article>adjective article>article article>compared article>contraction
          article>did article>est article>order article>preposition article>s be>article be>because be>did be>do
          be>s because>adjective because>article because>because because>contraction because>does because>kit
          because>number because>owner compared>preposition contraction>article contraction>hello contraction>owner
          contraction>particle contraction>preposition day>subject did>s did>subject do>article do>never do>other
          do>particle do>pointer does>adverb does>ed does>subject does>verb ed>kit ed>particle have>article
          hello>adverb hello>and hello>because hello>contraction hello>noun hello>part hello>preposition ing>and
          ing>article ing>ing ing>s ing>verb kit>amount kit>and kit>be kit>because kit>contraction kit>preposition
          modal>verb never>ing never>preposition never>verb never>want noun>article noun>be noun>contraction
          noun>hello noun>kit noun>of noun>praise number>and number>contraction number>day number>kit number>of
          number>order number>to object>because object>hello of>article of>owner order>day order>other other>and
          other>because other>contraction other>hello other>never other>to other>verb owned>amount owned>did
          owned>er owned>other owner>adjective owner>er owner>number owner>person owner>verb part>amount
          part>article part>be part>because part>contraction part>does part>modal part>number part>pointer
          part>unit particle>article particle>because particle>compared particle>contraction particle>part
          particle>preposition particle>verb person>verb pointer>be pointer>does pointer>order pointer>part
          praise>adjective praise>and praise>verb preposition>and preposition>article preposition>because
          preposition>contraction preposition>kit preposition>owner preposition>person preposition>praise
          preposition>preposition s>contraction subject>adverb subject>and subject>article subject>contraction
          subject>have subject>kit subject>modal subject>pointer subject>to subject>want then>article to>article
          to>owner to>verb unit>amount unit>and unit>hello unit>order verb>and verb>article verb>because
          verb>contraction verb>owner verb>subject verb>to want>to
        `,
      ],
      [
        -0.5,
        `
          adjective>adjective adjective>because adverb>hello amount>preposition and>does and>subject article>ed
          article>owned article>particle article>praise article>subject because>subject contraction>adverb
          contraction>noun did>adjective kit>does noun>and noun>part number>part of>other of>s order>adjective
          order>owned other>preposition owner>order owner>owned part>and part>never part>other part>to s>particle
          subject>because subject>did subject>praise subject>unit unit>of verb>amount verb>pointer verb>s
          want>number
        `,
      ],
      [
        -0.75,
        `
          adjective>hello and>hello contraction>because does>number part>hello unit>other verb>object
        `,
      ],
    ],
    'kind-ahead': [
      [
        1,
        `
          and>because>subject and>noun>article because>contraction>number noun>subject>particle
          particle>subject>verb
        `,
      ],
      [
        0.75,
        `
          adjective>noun>adjective and>article>s and>contraction>do and>noun>object and>number>and and>number>unit
          and>subject>do and>subject>other article>adjective>subject article>other>kit contraction>ing>contraction
          ing>article>part never>verb>subject part>particle>verb part>preposition>part particle>and>particle
          preposition>other>preposition subject>do>other subject>ed>subject subject>verb>because
          verb>subject>particle verb>verb>and
        `,
      ],
      [
        0.5,
        `
          adjective>adjective>verb adjective>adverb>contraction adjective>and>adjective adjective>part>number
          adjective>part>verb adjective>particle>article adjective>preposition>noun adjective>unit>because
          amount>subject>verb and>article>person and>because>contraction and>contraction>number
          and>contraction>preposition and>hello>contraction and>subject>did and>verb>owner article>amount>of
          article>ing>subject article>number>article article>of>subject article>other>amount article>other>article
          article>other>noun article>part>noun article>verb>contraction article>verb>subject article>verb>to
          because>because>article because>subject>hello because>subject>noun because>subject>s
          contraction>adverb>subject contraction>article>article contraction>ed>preposition contraction>ing>subject
          contraction>never>article do>subject>preposition have>article>amount hello>subject>verb
          hello>verb>preposition ing>particle>because kit>particle>adjective kit>particle>contraction
          never>and>verb never>noun>subject never>other>subject never>subject>subject never>verb>object
          noun>object>particle number>and>number number>number>number number>number>verb number>unit>to
          or>article>adjective or>subject>verb or>verb>article order>subject>adjective other>article>kit
          other>because>contraction other>does>verb other>noun>particle other>owner>kit other>subject>hello
          owner>part>be owner>part>modal part>adjective>noun part>adjective>verb part>and>article
          part>does>preposition part>noun>adverb part>part>part part>particle>number part>preposition>owner
          part>to>part particle>and>adverb particle>number>number particle>of>article particle>to>preposition
          pointer>be>article preposition>article>number preposition>article>s preposition>contraction>did
          preposition>noun>part preposition>particle>preposition preposition>s>verb s>preposition>article
          subject>be>because subject>be>number subject>did>number subject>does>subject subject>never>subject
          subject>part>ing subject>unit>preposition subject>verb>never subject>want>object then>subject>verb
          unit>article>kit verb>article>amount verb>article>ed verb>article>order verb>noun>part
          verb>object>adjective verb>object>particle verb>owner>person verb>particle>amount verb>particle>and
          verb>particle>number verb>preposition>contraction verb>subject>adjective verb>subject>preposition
          verb>subject>subject
        `,
      ],
      [
        0.25,
        `
          adjective>amount>because adjective>amount>preposition adjective>and>hello adjective>article>kit
          adjective>because>contraction adjective>kit>subject adjective>other>contraction adjective>part>adjective
          adjective>part>noun adjective>particle>number adjective>particle>verb adjective>subject>part
          adjective>to>article adjective>unit>and adjective>unit>particle adverb>because>adjective
          adverb>because>contraction adverb>other>subject adverb>particle>because adverb>particle>particle
          adverb>preposition>adjective adverb>subject>part adverb>verb>owner amount>article>unit amount>of>pointer
          amount>of>subject amount>particle>subject amount>preposition>article and>adjective>article
          and>article>adjective and>contraction>ing and>never>verb and>noun>particle and>number>verb
          and>particle>because and>particle>number and>subject>ed and>subject>verb and>verb>particle and>verb>verb
          article>adjective>hello article>amount>article article>amount>preposition article>contraction>article
          article>hello>subject article>ing>and article>ing>kit article>ing>other article>ing>verb article>kit>and
          article>kit>be article>kit>unit article>noun>contraction article>noun>never article>noun>noun
          article>order>noun article>order>owned article>other>modal article>other>pointer article>other>subject
          article>owned>preposition article>part>be article>part>ing article>part>never article>particle>unit
          article>person>other article>person>verb article>preposition>subject article>unit>because
          article>unit>contraction because>be>adjective because>contraction>be because>contraction>did
          because>contraction>ing because>contraction>subject because>number>unit because>other>preposition
          because>owned>article because>preposition>article because>preposition>number because>subject>ed
          because>subject>verb because>verb>article because>verb>subject compared>hello>verb compared>kit>because
          contraction>adverb>do contraction>article>hello contraction>article>noun contraction>article>part
          contraction>be>ing contraction>be>preposition contraction>because>contraction contraction>because>person
          contraction>ed>article contraction>ing>adverb contraction>never>ing contraction>never>want
          contraction>number>unit contraction>other>contraction contraction>owner>part
          contraction>preposition>subject do>pointer>because does>article>part does>verb>article
          ed>particle>article have>article>adjective hello>and>article hello>article>kit hello>article>other
          hello>contraction>preposition hello>contraction>verb hello>part>particle hello>part>preposition
          hello>particle>to hello>preposition>ing hello>subject>preposition ing>particle>subject
          kit>adverb>particle kit>and>because kit>article>kit kit>particle>article kit>preposition>article
          kit>preposition>number never>adjective>particle never>article>adjective never>hello>preposition
          never>other>other never>other>verb never>particle>preposition never>verb>article never>verb>other
          noun>article>er noun>article>part noun>because>contraction noun>because>owner noun>of>kit
          noun>owner>adjective noun>particle>because noun>particle>to noun>preposition>contraction
          noun>preposition>number noun>preposition>to noun>then>noun noun>to>article noun>verb>contraction
          number>amount>adverb number>and>article number>and>noun number>number>because number>part>be
          number>particle>number number>s>of number>to>article number>unit>adverb number>unit>amount
          number>unit>hello number>unit>or number>unit>particle number>unit>then or>owner>part order>article>other
          order>subject>verb order>unit>verb other>article>ing other>article>number other>compared>preposition
          other>contraction>did other>contraction>number other>contraction>preposition other>does>article
          other>hello>article other>kit>and other>kit>verb other>noun>subject other>object>particle
          other>of>article other>order>amount other>owner>s other>particle>preposition other>particle>verb
          other>pointer>verb other>s>subject other>subject>do other>subject>modal other>subject>preposition
          other>to>article other>verb>object other>verb>verb owned>adverb>adjective owner>noun>be owner>part>adverb
          owner>person>does part>adjective>adverb part>adjective>number part>adjective>other
          part>adjective>particle part>adverb>verb part>and>then part>article>amount part>does>adjective
          part>ed>particle part>ing>number part>ing>particle part>noun>verb part>number>number part>part>noun
          part>particle>and part>particle>noun part>particle>of part>particle>owner part>particle>person
          part>preposition>noun part>preposition>number part>preposition>verb part>subject>never part>to>owner
          part>verb>and part>verb>part particle>adjective>never particle>adjective>preposition
          particle>adjective>subject particle>ing>particle particle>noun>number particle>part>adjective
          particle>part>particle particle>particle>article particle>particle>never particle>particle>verb
          particle>preposition>number particle>preposition>owner particle>to>number particle>verb>adjective
          person>does>preposition pointer>be>because pointer>be>owner pointer>because>article
          pointer>part>adjective praise>and>adjective preposition>article>er preposition>article>particle
          preposition>article>unit preposition>because>pointer preposition>contraction>article
          preposition>contraction>ing preposition>ing>particle preposition>noun>contraction
          preposition>number>adjective preposition>number>preposition preposition>number>s preposition>number>unit
          preposition>owner>adjective preposition>owner>verb preposition>part>and preposition>pointer>part
          preposition>subject>does preposition>verb>article s>noun>article s>verb>object subject>adjective>subject
          subject>be>ing subject>be>preposition subject>did>pointer subject>did>subject subject>did>to
          subject>do>verb subject>does>adjective subject>does>because subject>hello>article
          subject>hello>preposition subject>modal>be subject>modal>have subject>modal>hello subject>modal>verb
          subject>never>and subject>never>want subject>noun>article subject>noun>owner subject>other>adjective
          subject>other>object subject>part>particle subject>preposition>contraction subject>preposition>to
          subject>verb>contraction subject>verb>other subject>verb>preposition subject>want>pointer
          then>noun>object then>particle>to then>verb>article then>verb>part then>verb>subject to>other>subject
          unit>number>and unit>preposition>other verb>adjective>noun verb>adjective>preposition
          verb>adverb>preposition verb>article>adjective verb>article>praise verb>article>verb
          verb>hello>preposition verb>ing>subject verb>ing>verb verb>object>ing verb>object>preposition
          verb>of>article verb>other>do verb>owner>unit verb>part>verb verb>particle>of verb>pointer>particle
          verb>preposition>adverb verb>preposition>and verb>preposition>number verb>preposition>want
          verb>then>article verb>then>verb verb>to>owner verb>verb>verb
        `,
      ],
      [
        -0.25,
        `
          adjective>and>verb adjective>article>part adjective>because>subject adjective>part>particle
          adverb>adjective>adjective adverb>and>subject adverb>article>adjective adverb>article>ing
          adverb>kit>preposition adverb>part>noun adverb>particle>preposition adverb>subject>modal
          adverb>subject>want adverb>verb>article adverb>verb>particle amount>of>article amount>preposition>owner
          and>adjective>preposition and>adverb>verb and>article>amount and>contraction>ed and>contraction>other
          and>never>article and>noun>subject and>noun>verb and>number>kit and>number>particle
          and>number>preposition and>other>preposition and>other>subject and>particle>adverb and>particle>noun
          and>preposition>number and>verb>adjective and>verb>part article>adjective>adjective article>adjective>and
          article>adjective>other article>adjective>unit article>amount>adjective article>compared>preposition
          article>ing>article article>ing>owner article>kit>because article>kit>contraction article>kit>particle
          article>kit>preposition article>kit>verb article>noun>adjective article>noun>particle article>noun>then
          article>number>verb article>order>subject article>other>adjective article>other>adverb article>other>be
          article>other>order article>other>unit article>other>verb article>part>adverb article>part>because
          article>part>does article>part>part article>part>particle article>s>verb article>verb>number
          article>verb>verb be>article>other because>article>owned because>contraction>adverb
          because>contraction>ed because>contraction>have because>contraction>preposition because>contraction>verb
          because>other>verb because>owner>part because>owner>particle because>subject>have because>subject>other
          compared>preposition>owner contraction>adjective>other contraction>adjective>verb contraction>adverb>did
          contraction>article>adjective contraction>did>number contraction>do>article contraction>ed>particle
          contraction>ing>verb contraction>never>preposition contraction>particle>preposition
          contraction>subject>number contraction>subject>preposition contraction>subject>subject
          contraction>verb>preposition do>article>adjective do>subject>adjective does>preposition>article
          ed>particle>preposition have>article>kit hello>adjective>preposition hello>do>subject hello>subject>did
          hello>verb>article ing>preposition>article kit>because>contraction kit>preposition>owner never>be>ing
          never>preposition>subject never>verb>particle noun>article>particle noun>because>subject
          noun>number>number noun>particle>article noun>particle>verb noun>subject>modal noun>subject>verb
          noun>verb>article noun>verb>preposition number>article>adjective number>other>noun number>other>subject
          number>preposition>article number>subject>amount number>unit>because number>unit>ing number>unit>never
          number>unit>of number>unit>part or>article>other other>and>contraction other>and>subject
          other>article>other other>contraction>other other>noun>part other>part>preposition other>particle>article
          other>particle>of other>person>verb other>subject>be other>subject>because other>subject>verb
          other>verb>owner other>verb>particle owner>part>part owner>part>particle owner>part>preposition
          owner>part>verb part>adjective>subject part>be>adverb part>be>ing part>because>contraction
          part>ed>preposition part>never>verb part>noun>particle part>part>particle part>part>preposition
          part>particle>article part>particle>be part>particle>contraction part>particle>never part>particle>order
          part>preposition>preposition part>to>verb part>unit>particle part>verb>owner part>verb>particle
          part>verb>subject particle>and>article particle>and>verb particle>article>other particle>of>number
          particle>of>owner particle>owner>part particle>part>preposition particle>preposition>contraction
          particle>subject>preposition particle>to>owner particle>verb>article pointer>be>ing
          preposition>article>order preposition>number>and preposition>number>particle preposition>other>number
          preposition>owner>noun preposition>owner>part preposition>part>noun preposition>pointer>subject
          preposition>subject>and preposition>subject>be preposition>subject>because preposition>subject>part
          preposition>to>owner subject>adjective>part subject>and>verb subject>be>article subject>be>other
          subject>contraction>article subject>do>pointer subject>do>preposition subject>end>end subject>modal>never
          subject>never>preposition subject>noun>number subject>noun>preposition subject>other>contraction
          subject>other>owner subject>part>adjective subject>preposition>number subject>verb>adverb
          subject>verb>part subject>verb>subject subject>want>number subject>want>to then>article>part
          then>particle>preposition to>article>adjective unit>preposition>article verb>adjective>because
          verb>adjective>particle verb>adjective>verb verb>article>er verb>article>other verb>ing>preposition
          verb>noun>particle verb>noun>preposition verb>number>number verb>object>verb verb>other>preposition
          verb>part>because verb>particle>because verb>particle>subject verb>particle>to verb>preposition>because
          verb>preposition>owner verb>subject>and verb>subject>did verb>subject>modal verb>subject>verb
          verb>subject>want verb>to>other verb>to>part verb>to>verb verb>verb>adjective verb>verb>subject
        `,
      ],
      [
        -0.5,
        `
          adjective>kit>preposition adjective>preposition>owner adjective>verb>article and>contraction>adverb
          and>contraction>never and>hello>preposition and>noun>preposition and>particle>contraction
          and>subject>does and>subject>modal article>adjective>noun article>ing>preposition
          article>other>contraction article>other>other article>other>part article>verb>because
          because>article>part because>contraction>adjective because>verb>preposition contraction>adverb>adjective
          contraction>article>praise contraction>ing>owner contraction>ing>preposition contraction>want>preposition
          never>noun>owner never>verb>because noun>adjective>part noun>preposition>article number>be>article
          number>contraction>ing number>number>other number>number>subject number>subject>verb number>to>number
          number>unit>contraction number>verb>article or>subject>modal part>adjective>part part>because>subject
          part>particle>subject part>preposition>adjective part>verb>preposition particle>preposition>subject
          subject>be>want subject>did>preposition subject>modal>noun subject>part>verb subject>verb>owner
          then>contraction>article verb>article>number verb>because>contraction verb>owner>hello
          verb>part>preposition verb>subject>because
        `,
      ],
      [
        -0.75,
        `
          and>article>part and>contraction>owner and>then>article because>subject>be because>subject>modal
          never>verb>owner number>and>subject preposition>article>adjective subject>modal>do verb>particle>part
        `,
      ],
      [-1, 'and>article>noun'],
    ],
    'class-ahead': [
      [1, 'opener>down opener>find opener>in'],
      [
        0.75,
        `
          number>slow number>twelve opener>it other>arms other>them part>don't part>long part>through unit>on
          verb>have
        `,
      ],
      [
        0.5,
        `
          ing>a ing>i kit>a kit>for kit>leg kit>up manner>not number>3 number>down number>for number>going
          number>it number>minutes number>no number>off number>press number>tall number>walk number>we opener>eight
          opener>just opener>one opener>that's other>all other>bring other>by other>can other>cross other>doesn't
          other>first other>foot other>know other>leg other>love other>now other>of other>off other>people
          other>quiet other>stays other>stop other>stretch other>swap other>those other>together other>two
          other>won't part>a part>both part>it's part>knee part>lower part>peel part>them part>three part>to
          part>your preposition>about preposition>as preposition>in preposition>like preposition>out
          preposition>pause preposition>soft preposition>stand preposition>you've pronoun>behind pronoun>lift
          pronoun>not pronoun>seconds unit>a unit>minute unit>seconds unit>set unit>twenty unit>two verb>call
          verb>drive verb>first verb>is verb>side
        `,
      ],
      [
        0.25,
        `
          and>heel and>stop and>that's article>an article>do article>drink article>home article>i'd article>leave
          article>minutes article>nobody article>press article>rows article>seconds article>six article>toes
          article>too article>want auxiliary>five auxiliary>them because>don't because>of because>one because>to
          contraction>i'm contraction>with ing>at ing>down ing>get ing>it ing>not ing>that's ing>them kit>hands
          kit>heel kit>i kit>in kit>push kit>step kit>then ly>it manner>by manner>floor manner>it's manner>make
          manner>on manner>rest manner>take manner>that's manner>then manner>time manner>up never>a never>i
          number>1 number>5 number>about number>after number>four number>go number>got number>if number>it's
          number>nice number>seven number>shake number>shoulders number>six number>sort number>that number>that's
          number>then number>times opener>back opener>can opener>done opener>five opener>going opener>hip
          opener>make opener>on opener>same opener>second opener>the opener>this opener>two opener>you're other>6
          other>across other>anybody other>as other>ask other>at other>away other>before other>body other>box
          other>call other>climbers other>curls other>done other>facing other>fast other>five other>get other>got
          other>he other>higher other>hold other>i'm other>is other>just other>keep other>let other>metres
          other>mind other>ninety other>ones other>over other>press other>ray other>seen other>sets other>shuffle
          other>sitting other>somebody other>straight other>support other>than other>there's other>too other>tuck
          other>up other>very other>water other>where other>wide part>back part>breathe part>feel part>hand
          part>hands part>it part>just part>now part>shoulder part>six part>take part>till part>twenty part>we'll
          part>with preposition>are preposition>back preposition>bar preposition>be preposition>bent
          preposition>body preposition>breath preposition>breaths preposition>coming preposition>face
          preposition>forward preposition>goes preposition>i preposition>i'll preposition>it's preposition>jump
          preposition>keep preposition>let preposition>lift preposition>long preposition>no preposition>off
          preposition>on preposition>pair preposition>plank preposition>put preposition>rounds preposition>sides
          preposition>slide preposition>squats preposition>swap preposition>that preposition>there
          preposition>under preposition>up preposition>was preposition>we'll preposition>wee pronoun>and pronoun>as
          pronoun>come pronoun>hands pronoun>here pronoun>if pronoun>just pronoun>knees pronoun>nice pronoun>of
          pronoun>okay pronoun>on pronoun>pull pronoun>say pronoun>stay pronoun>tall pronoun>till pronoun>time
          pronoun>two unit>back unit>don't unit>for unit>in unit>leg unit>round unit>ten unit>there's unit>times
          unit>to unit>up verb>3 verb>again verb>an verb>chair verb>dead verb>flat verb>good verb>if verb>let
          verb>palms verb>round verb>shoulders verb>some verb>squeeze verb>walk verb>was verb>you're
        `,
      ],
      [
        -0.25,
        `
          and>don't and>down and>them and>up and>your article>a article>and article>are article>don't article>for
          article>i article>if article>in article>it article>leg article>nobody's article>not article>of
          article>one article>then article>to article>up article>you auxiliary>a auxiliary>not auxiliary>one
          auxiliary>the auxiliary>to auxiliary>up because>a because>as because>can because>is because>it
          because>it's because>not because>was because>you contraction>a ing>do ing>like ing>look ing>out ing>push
          ing>so ing>that kit>and kit>come kit>down kit>feet kit>no kit>off kit>stand kit>the kit>to kit>you
          manner>are manner>back manner>go manner>just manner>let manner>now manner>pull manner>right manner>stay
          manner>that manner>use manner>way never>your number>breathe number>don't number>each number>good
          number>in number>is number>last number>my number>push number>rest number>second number>seconds
          number>stay number>them number>there's number>today number>two opener>a opener>at opener>do opener>end
          opener>minutes opener>not opener>off opener>out opener>pair opener>side opener>you other>any other>back
          other>be other>been other>bend other>between other>breath other>but other>came other>cat other>close
          other>come other>comes other>drop other>dumbbells other>eleven other>find other>fine other>from
          other>goes other>had other>here other>home other>i other>left other>legs other>lie other>morning
          other>nice other>no other>not other>one other>onto other>or other>same other>save other>second
          other>should other>shoulders other>side other>sides other>sit other>slowly other>small other>somebody's
          other>sorry other>steps other>swinging other>that other>this other>till other>turn other>twelve other>we
          other>we'll other>week other>well other>what other>when other>with other>you'll part>as part>bend
          part>come part>no part>out part>over part>slide part>stand part>step part>straight part>they part>this
          part>time part>together part>turn part>walk preposition>2 preposition>3 preposition>and preposition>at
          preposition>bring preposition>five preposition>four preposition>front preposition>get preposition>got
          preposition>heavy preposition>height preposition>knees preposition>leg preposition>let's
          preposition>minute preposition>minutes preposition>over preposition>pull preposition>sit preposition>so
          preposition>take preposition>ten preposition>that's preposition>touch preposition>where preposition>wide
          preposition>you preposition>your pronoun>about pronoun>at pronoun>do pronoun>down pronoun>first
          pronoun>for pronoun>go pronoun>got pronoun>hold pronoun>in pronoun>it's pronoun>keep pronoun>know
          pronoun>me pronoun>put pronoun>times pronoun>to pronoun>you unit>about unit>after unit>and unit>fifteen
          unit>first unit>let unit>no unit>off unit>side unit>the unit>then verb>a verb>and verb>arm verb>down
          verb>for verb>it's verb>knee verb>lie verb>off verb>seconds verb>them verb>together verb>two verb>use
          verb>you
        `,
      ],
      [
        -0.5,
        `
          and>it and>the ing>if ing>no ing>you ing>your kit>as kit>hold kit>press kit>you're manner>you've number>a
          number>call number>hips number>i number>i'm number>of number>on number>you're opener>first opener>hands
          opener>knees opener>rest opener>then opener>three other>both other>feel other>four other>going other>high
          other>i've other>knee other>last other>lean other>look other>march other>me other>other other>so
          other>ten other>want part>arms part>like part>off part>stop part>that's part>then part>width
          preposition>hands preposition>of preposition>round preposition>we're preposition>you're pronoun>then
          pronoun>up unit>half unit>i unit>i'm unit>metres unit>so verb>one verb>stay
        `,
      ],
    ],
    other: [
      [0.25, 'may-open opens'],
      [-0.25, 'goes-on'],
      [-1, 'line'],
    ],
    'since-kind': [
      [0.5, '2>s 3>then 4>never 4>then 5>hello 5>never 5>then 6>never 7>have 7>never'],
      [
        0.25,
        `
          1>and 1>but 1>praise 2>and 2>contraction 2>est 2>verb 3>contraction 3>never 3>person 3>praise 3>verb
          4>owned 4>person 4>verb 6>adverb 6>contraction 6>hello 7>because 7>hello 7>number 7>or 7>owned 7>then
        `,
      ],
      [
        -0.25,
        `
          1>adverb 1>because 1>compared 1>does 1>ed 1>have 1>ing 1>kit 1>of 1>or 1>other 1>owner 1>particle
          1>preposition 1>subject 1>verb 1>want 2>amount 2>day 2>have 2>modal 2>number 2>owner 2>person 2>then
          2>unit 2>want 3>amount 3>be 3>modal 3>object 3>of 3>particle 3>preposition 3>to 3>unit 3>want 4>adverb
          4>do 4>er 4>ing 4>noun 4>object 4>of 4>order 4>other 4>preposition 4>to 5>amount 5>and 5>because
          5>compared 5>er 5>of 5>order 5>owner 5>to 5>unit 6>be 6>ed 6>have 6>ing 6>kit 6>of 6>s 6>subject
          7>compared 7>does 7>ed 7>noun 7>of 7>order 7>person 7>praise
        `,
      ],
      [
        -0.5,
        `
          1>adjective 1>amount 1>article 1>be 1>do 1>never 1>noun 1>owned 1>part 1>person 1>pointer 1>s 1>to 1>unit
          2>be 2>does 2>ed 2>object 2>of 2>pointer 2>preposition 2>to 3>but 3>did 3>er 3>owner 4>and 4>does 4>unit
          5>adverb 5>does 7>be 7>ing 7>kit 7>particle 7>s
        `,
      ],
    ],
    'class-word': [
      [
        0.75,
        `
          manner>no number>down number>same opener>the other>before other>he other>like other>lovely other>no
          other>only part>then preposition>just preposition>no preposition>up verb>put verb>so
        `,
      ],
      [
        0.5,
        `
          article>and article>no auxiliary>that's ing>i ing>then ing>with manner>knee manner>same manner>up
          number>rest number>so number>this number>with number>you opener>down opener>feet opener>good opener>shake
          other>about other>after other>all other>arms other>back other>backs other>big other>do other>don't
          other>draw other>everyone other>go other>he's other>i other>knees other>legs other>let other>long
          other>my other>nobody other>shoulders other>sit other>so other>somebody other>sorry other>step
          other>there's other>they other>they've other>twenty other>twice other>which other>you're part>arms
          part>between part>five part>hold part>other part>push part>slow part>squeeze part>walk part>where
          preposition>do preposition>knees preposition>one preposition>other preposition>out preposition>same
          preposition>so preposition>somebody preposition>that's preposition>two preposition>we're
          preposition>you've pronoun>just unit>that's unit>then unit>thirty unit>with verb>an verb>i verb>push
          verb>some
        `,
      ],
      [
        0.25,
        `
          and>if and>uh article>at article>er article>hold article>it article>strides article>walk article>your
          auxiliary>for auxiliary>forty auxiliary>have auxiliary>leave auxiliary>thank auxiliary>three
          contraction>for contraction>nearly contraction>what ing>just ing>keep ing>like ing>little kit>feet
          kit>it's kit>just kit>not kit>please kit>row kit>stand kit>step kit>then kit>with manner>3 manner>about
          manner>breathe manner>but manner>by manner>do manner>hold manner>if manner>in manner>just manner>let
          manner>like manner>long manner>not manner>one manner>roll manner>sit manner>six manner>that manner>then
          number>10 number>and number>as number>by number>for number>have number>hold number>it's number>lovely
          number>no number>six number>slow number>that's number>there opener>evening opener>everybody opener>first
          opener>let opener>not opener>put opener>that's opener>there's other>3 other>against other>an other>ask
          other>baby other>because other>breathe other>bring other>change other>chest other>come other>could
          other>curl other>curls other>double other>eight other>even other>everybody other>feet other>fifteen
          other>find other>front other>get other>hands other>hold other>it's other>land other>look other>mine
          other>nice other>not other>number other>other other>palms other>pick other>push other>quick
          other>remember other>ring other>round other>rows other>run other>same other>she other>soft
          other>somebody's other>squeeze other>standing other>support other>take other>then other>these other>think
          other>those other>thumbs other>um other>under other>until other>well other>whether part>10 part>about
          part>both part>elbows part>flat part>it part>it's part>like part>not part>opposite part>same part>sit
          part>slowly part>sort part>square part>stop part>that part>the part>they part>two part>you'll
          preposition>arms preposition>back preposition>bend preposition>both preposition>bring preposition>don't
          preposition>find preposition>four preposition>give preposition>go preposition>good preposition>i
          preposition>jump preposition>last preposition>like preposition>or preposition>pull preposition>push
          preposition>rings preposition>round preposition>sixty preposition>step preposition>swing
          preposition>three preposition>turn preposition>years pronoun>from pronoun>i pronoun>into pronoun>lean
          pronoun>so pronoun>step pronoun>your unit>four unit>i unit>one unit>shake unit>so unit>that unit>three
          unit>twice unit>we verb>about verb>breathe verb>don't verb>hands verb>keep verb>knee verb>light verb>or
          verb>sit verb>that's verb>then verb>twelve verb>walk verb>we verb>we'll
        `,
      ],
      [
        -0.25,
        `
          and>a and>i and>it's and>not and>so and>then and>you article>a article>arms article>back article>elbows
          article>feet article>hands article>hips article>knees article>last article>morning article>other
          article>shoulders article>side article>sit auxiliary>a auxiliary>do auxiliary>i because>i because>i've
          because>if because>it because>it's because>that's because>well because>you've because>your contraction>a
          ing>but ing>in ing>it ing>on ing>that ing>that's ing>you ing>you've kit>about kit>for kit>press kit>so
          ly>and ly>no manner>back manner>bend manner>come manner>for manner>is manner>it's manner>leg manner>lift
          manner>peel manner>we never>hold never>let number>4 number>eight number>feet number>five number>foot
          number>good number>hand number>i number>is number>more number>now number>of number>out number>seconds
          number>then number>there's number>to opener>as opener>but opener>everyone opener>in opener>morning
          opener>one opener>team opener>week opener>with opener>work other>a other>ago other>between other>bit
          other>can other>check other>coming other>done other>down other>either other>enough other>eyes other>feel
          other>foot other>for other>forward other>from other>has other>heavy other>heel other>high other>how
          other>jump other>just other>knee other>lift other>little other>next other>nine other>on other>once
          other>one other>ones other>out other>over other>people other>please other>put other>quads other>roll
          other>side other>since other>some other>split other>squats other>than other>that other>them other>toes
          other>tonight other>too other>turn other>up other>we'll other>were other>what other>when other>who's
          other>you other>you'll other>you've part>and part>are part>bent part>button part>close part>drop part>for
          part>goes part>height part>hip part>is part>long part>open part>out part>over part>pull part>raise
          part>reach part>slide part>stay part>still part>straight part>to part>together part>up part>when
          part>wide preposition>a preposition>between preposition>each preposition>first preposition>flat
          preposition>for preposition>high preposition>hip preposition>hold preposition>is preposition>it
          preposition>it's preposition>knee preposition>leg preposition>let preposition>level preposition>line
          preposition>look preposition>make preposition>now preposition>of preposition>seven preposition>sit
          preposition>six preposition>slow preposition>slowly preposition>stop preposition>the preposition>them
          preposition>there's preposition>to preposition>with preposition>you preposition>your pronoun>all
          pronoun>don't pronoun>for pronoun>if pronoun>in pronoun>know pronoun>like pronoun>mean pronoun>up unit>a
          unit>between unit>each unit>left unit>of unit>on unit>step unit>two verb>a verb>as verb>at verb>back
          verb>it verb>it's verb>lower verb>tall verb>them verb>there verb>up verb>ups verb>where verb>with
          verb>your
        `,
      ],
      [
        -0.5,
        `
          article>one auxiliary>not because>you're contraction>not number>each number>hundred number>i'd number>on
          number>one opener>up other>again other>are other>at other>first other>give other>grip other>here
          other>instead other>it other>leg other>of other>press other>this other>three other>to other>today
          other>use other>walk other>while other>who other>with other>your part>blades part>you preposition>as
          preposition>down preposition>eight preposition>there unit>round verb>hold verb>there's
        `,
      ],
      [-0.75, 'other>as other>now other>stay other>two'],
    ],
    'kind-opening': [
      [1, 'and>because'],
      [
        0.75,
        `
          and>pointer article>owned because>because contraction>ed or>part other>pointer pointer>be subject>does
          subject>never then>number
        `,
      ],
      [
        0.5,
        `
          adjective>part adjective>pointer adverb>noun adverb>subject and>adverb and>amount and>contraction
          article>ing be>pointer be>subject because>be but>never but>verb contraction>amount contraction>be
          contraction>never contraction>owner did>adjective have>article have>subject hello>article
          hello>contraction modal>subject never>and noun>object number>other order>amount other>object
          part>adjective part>order part>s particle>particle pointer>owned praise>and praise>hello
          preposition>particle s>particle then>s then>verb verb>object verb>pointer verb>then
        `,
      ],
      [
        0.25,
        `
          adjective>amount adjective>but adjective>ed adjective>er adjective>person adverb>compared adverb>ing
          adverb>other adverb>to adverb>want amount>article amount>be and>kit and>owned article>adverb
          article>amount article>praise article>s article>verb because>did because>modal because>never because>noun
          because>preposition but>contraction compared>hello compared>preposition contraction>article
          contraction>because contraction>do contraction>unit do>never does>be er>part hello>amount hello>kit
          hello>noun hello>other hello>preposition ing>article ing>be kit>ed kit>object kit>particle never>hello
          never>number never>other never>owner never>particle noun>other noun>person noun>s number>hello number>kit
          number>pointer object>and object>article or>article or>contraction or>noun or>other order>kit
          order>subject other>amount other>and other>does other>noun other>owner owned>adverb owner>owned owner>s
          part>does part>ed part>ing part>particle part>to particle>ing particle>owned particle>s person>does
          pointer>adjective pointer>unit praise>person praise>verb preposition>amount preposition>s s>be s>order
          subject>did subject>s subject>then subject>unit then>adjective then>preposition verb>and verb>does
          verb>owner
        `,
      ],
      [
        -0.25,
        `
          adjective>article adjective>because adjective>contraction adjective>hello adjective>object adjective>verb
          adverb>adverb adverb>be adverb>contraction adverb>does adverb>ed adverb>owner adverb>particle adverb>verb
          amount>adverb amount>never amount>number and>never article>adjective article>and article>article
          article>day article>does article>er article>kit article>particle article>unit be>adjective be>adverb
          be>article be>ing be>number be>other be>preposition because>amount because>article because>do
          because>hello because>kit because>owner because>person because>s contraction>kit contraction>pointer
          contraction>s contraction>verb day>contraction did>article did>object does>adjective does>number
          does>particle does>subject ed>part er>subject hello>adverb hello>because hello>owner hello>particle
          hello>pointer hello>then ing>adverb ing>and ing>contraction ing>noun ing>number ing>part ing>verb kit>and
          kit>contraction kit>kit kit>part kit>pointer kit>s kit>verb modal>be modal>do modal>verb never>amount
          never>do never>to never>want noun>adjective noun>adverb noun>and noun>contraction noun>hello noun>ing
          noun>never noun>number noun>owned noun>part number>because number>does number>preposition number>s
          number>verb object>particle object>preposition of>article of>number of>object of>owner of>pointer
          of>subject or>preposition or>s or>verb order>particle other>be other>did other>do other>hello
          other>preposition other>verb owned>ing owner>adjective owner>amount owner>noun owner>part owner>particle
          owner>unit part>and part>be part>hello part>kit part>noun part>number part>or part>subject part>verb
          particle>adverb particle>contraction particle>never particle>order particle>other particle>owner
          particle>pointer particle>praise particle>then particle>verb person>other person>verb pointer>adverb
          pointer>do pointer>hello pointer>kit pointer>order praise>subject preposition>adverb preposition>and
          preposition>be preposition>day preposition>kit preposition>owner preposition>part preposition>pointer
          preposition>verb s>article s>because s>part s>subject subject>adjective subject>and subject>compared
          subject>end subject>er subject>ing subject>number subject>of subject>owned subject>particle
          subject>pointer subject>preposition subject>subject then>adverb then>article then>contraction then>noun
          then>owner then>part to>article to>number to>owner to>verb unit>adjective unit>adverb unit>and
          unit>because unit>of unit>particle unit>preposition unit>subject unit>verb verb>be verb>compared
          verb>other verb>owned verb>to want>particle want>to
        `,
      ],
      [
        -0.5,
        `
          adjective>ing adjective>order adjective>other adjective>owner adverb>adjective adverb>never amount>verb
          and>adjective and>hello and>ing and>particle and>preposition and>s and>unit article>because but>article
          but>subject contraction>subject ed>preposition kit>does noun>kit noun>verb number>contraction or>kit
          order>part other>adverb other>part other>unit part>because part>contraction part>other particle>article
          pointer>noun preposition>adjective preposition>object preposition>preposition preposition>subject
          subject>article subject>because subject>contraction verb>because verb>contraction verb>or
        `,
      ],
      [-0.75, 'and>part or>because praise>amount'],
    ],
    'kind-word': [
      [1, 'order>the'],
      [0.75, 'hello>on noun>so noun>then particle>back particle>one unit>so verb>like'],
      [
        0.5,
        `
          adjective>arms adjective>bring adjective>don't adjective>down adjective>hands adjective>land
          adjective>like adjective>make adjective>no adjective>sit adjective>so adverb>breathe adverb>one
          adverb>with amount>like article>you day>bring do>for does>or er>if hello>for hello>that hello>the
          kit>because kit>out never>you noun>do noun>it's noun>keep noun>no noun>or noun>push number>as number>down
          number>lovely number>no number>so number>that's number>with number>you order>and other>about
          other>because other>before other>do other>he's other>in other>it's other>leave other>my other>not
          other>that's other>you part>back part>between part>elbows part>five part>not part>other part>push
          part>sort part>walk part>where particle>all particle>arms particle>chest particle>just particle>no
          particle>other particle>right particle>so particle>squeeze particle>up particle>you've preposition>go
          preposition>hang preposition>heel preposition>just preposition>like preposition>on preposition>press
          preposition>that's s>go s>you're subject>just subject>same subject>two subject>your unit>that's unit>with
          verb>fold verb>i'm verb>keep verb>last verb>not verb>opposite
        `,
      ],
      [
        0.25,
        `
          adjective>3 adjective>a adjective>big adjective>breathing adjective>do adjective>four adjective>i'm
          adjective>my adjective>not adjective>right adjective>roll adjective>sharp adjective>then adjective>under
          adjective>up adverb>in adverb>just adverb>six adverb>the adverb>turn adverb>your article>and article>i
          article>um be>all contraction>what did>and do>all do>i does>go ed>don't hello>everybody hello>good
          hello>i ing>i ing>just ing>keep ing>little ing>then ing>with kit>about kit>i kit>just kit>like kit>no
          kit>not kit>off kit>pull kit>row kit>stand kit>step kit>take never>for never>the noun>3 noun>a
          noun>breathe noun>come noun>eight noun>just noun>like noun>one noun>only number>10 number>a number>by
          number>hold number>keep number>rest number>same number>six number>then number>this object>the order>to
          other>all other>back other>i've other>let's other>lower other>no other>off other>or other>round
          other>stop other>take other>there's other>think part>10 part>about part>arms part>both part>breathe
          part>flat part>hold part>i part>it part>leave part>like part>lower part>opposite part>put part>round
          part>same part>slow part>slowly part>square part>tall part>that part>the part>then part>they part>two
          part>you part>you'll particle>both particle>come particle>do particle>don't particle>elbows particle>go
          particle>good particle>if particle>jump particle>knees particle>last particle>lift particle>not
          particle>out particle>push particle>step particle>swing particle>that particle>that's particle>two
          pointer>and pointer>at pointer>it praise>good praise>on preposition>before preposition>every
          preposition>four preposition>keep preposition>no preposition>three preposition>up s>no s>then s>two
          subject>about subject>down subject>feet subject>from subject>have subject>i subject>i've subject>if
          subject>into subject>keep subject>lean subject>no subject>rest subject>step subject>the subject>work
          unit>a unit>do unit>it's unit>next unit>not unit>the unit>three unit>twice unit>up unit>you verb>10
          verb>an verb>and verb>both verb>breathe verb>every verb>five verb>gently verb>hands verb>i verb>if
          verb>is verb>let verb>nice verb>now verb>or verb>sit verb>so verb>somebody verb>squats verb>twelve
        `,
      ],
      [
        -0.25,
        `
          adjective>again adjective>all adjective>arm adjective>five adjective>hand adjective>keep adjective>knee
          adjective>lift adjective>of adjective>ribs adjective>shoulders adjective>six adjective>step
          adjective>take adjective>ten adjective>the adjective>three adjective>turn adjective>when adverb>a
          adverb>arms adverb>do adverb>go adverb>i adverb>leg adverb>no adverb>that's adverb>when amount>i
          amount>in amount>of amount>that amount>the article>one article>other article>right be>not be>the
          because>if because>it because>it's because>stop because>that because>that's because>this because>we
          because>well because>you because>you've because>your contraction>a day>and did>a do>it does>it does>you
          ed>it have>a hello>at hello>everyone hello>it's hello>my hello>so hello>team hello>up hello>you ing>in
          ing>it ing>on ing>that's kit>away kit>breathe kit>down kit>each kit>five kit>for kit>from kit>in kit>it
          kit>on kit>only kit>press kit>sit kit>that kit>this modal>do modal>reach never>hold never>let noun>again
          noun>back noun>bring noun>down noun>first noun>heels noun>hold noun>in noun>is noun>now noun>of noun>that
          noun>three noun>walk number>4 number>eight number>feet number>five number>good number>i'm number>nine
          number>of number>or number>seconds number>slow number>the number>there's of>the order>but order>go
          order>round order>week other>arms other>as other>by other>drop other>elbows other>forty other>four
          other>grip other>i'm other>leg other>little other>now other>out other>push other>so other>up other>with
          other>your owned>a owned>the owner>knees part>are part>bent part>button part>don't part>drop part>for
          part>goes part>height part>hip part>is part>open part>over part>pull part>raise part>reach part>slide
          part>stay part>still part>straight part>this part>to part>together part>tuck part>when part>wide
          particle>again particle>between particle>breathe particle>heel particle>is particle>keep particle>knee
          particle>leg particle>now particle>of particle>pull particle>slow particle>slowly particle>there's
          particle>this particle>till particle>to particle>with person>who pointer>one pointer>you praise>and
          praise>work preposition>2 preposition>a preposition>front preposition>hold preposition>it's
          preposition>line preposition>shoulders preposition>the preposition>to preposition>you preposition>you're
          preposition>your s>hands s>just s>off s>on s>stay subject>don't subject>else subject>every subject>foot
          subject>for subject>heel subject>is subject>know subject>mean subject>on subject>up to>the unit>ago
          unit>between unit>each unit>if unit>in unit>is unit>left unit>of unit>round unit>we verb>a verb>as
          verb>down verb>for verb>it verb>it's verb>me verb>no verb>tall verb>three verb>up verb>which verb>with
          verb>your want>a
        `,
      ],
      [
        -0.5,
        `
          adjective>foot adjective>it's adjective>leg adjective>one adverb>you and>then because>i because>they
          because>you're compared>if contraction>not hello>then kit>and kit>so noun>and noun>as noun>each noun>it
          number>each number>hundred number>if number>on order>one other>one other>three part>blades part>come
          part>long part>up particle>as particle>down particle>there s>that's unit>on verb>two verb>you
        `,
      ],
      [-0.75, 'owned>not'],
    ],
    'first-kinds': [
      [
        0.75,
        `
          contraction>particle contraction>subject number>subject pointer>preposition praise>other
        `,
      ],
      [
        0.5,
        `
          adjective>adverb adjective>preposition adjective>unit adverb>particle and>to article>object article>verb
          because>amount because>part contraction>unit hello>kit hello>s kit>be noun>adverb noun>noun noun>then
          noun>verb or>amount order>other other>because part>be part>contraction part>part particle>adverb
          preposition>unit s>number s>preposition s>verb subject>ing then>article then>never to>verb verb>noun
          verb>order verb>verb
        `,
      ],
      [
        0.25,
        `
          adjective>contraction adjective>hello adjective>ing adjective>kit adverb>and adverb>article adverb>ing
          adverb>of adverb>want amount>ing and>and and>hello and>kit and>number and>s article>contraction
          article>never because>er because>hello because>order contraction>adjective contraction>object
          contraction>pointer contraction>praise did>particle did>preposition do>number do>verb does>be does>part
          ed>contraction er>owner have>subject hello>amount hello>article hello>because hello>ing hello>owner
          hello>subject hello>then ing>particle kit>particle kit>verb never>adverb never>be never>compared never>do
          never>hello never>number noun>does noun>part number>adverb number>never number>particle number>person
          number>then number>verb or>subject order>article order>kit order>of order>part other>amount
          other>contraction other>ing other>never other>other other>particle other>preposition other>s other>to
          owned>ing owned>kit owned>preposition owner>adjective owner>number part>modal part>number part>want
          particle>hello particle>particle particle>subject particle>to person>kit pointer>kit praise>ed
          praise>pointer praise>verb preposition>amount preposition>part s>particle subject>part then>adverb
          to>noun verb>compared verb>does verb>ed verb>ing verb>want want>amount
        `,
      ],
      [
        -0.25,
        `
          adjective>amount adjective>and adjective>article adjective>because adjective>but adjective>er
          adjective>of adjective>other adjective>owner adjective>to adjective>verb adverb>amount adverb>preposition
          adverb>to adverb>verb amount>contraction amount>number amount>owner and>amount and>contraction and>part
          and>preposition and>verb article>amount article>does article>ed article>ing article>of article>order
          article>part article>person article>subject because>adverb because>be because>ed because>owner but>never
          compared>noun compared>verb contraction>amount contraction>did contraction>ed contraction>hello
          contraction>number contraction>other do>never est>amount hello>contraction hello>do hello>never
          ing>adjective ing>kit ing>owned ing>subject kit>object kit>to never>because never>ing never>object
          never>owner never>particle never>verb noun>amount noun>article noun>particle number>contraction
          number>pointer or>s or>verb order>adjective order>day order>does order>verb other>and other>be other>does
          other>of other>order other>owned other>person owned>amount owned>be owned>because owned>did owner>noun
          owner>person part>and part>article part>does part>ing part>never part>noun part>or part>order
          particle>and particle>article particle>because particle>owned particle>part particle>preposition
          pointer>be pointer>does pointer>modal pointer>owned pointer>subject praise>adjective praise>ing praise>to
          preposition>to subject>be subject>did subject>have subject>kit subject>modal subject>never subject>s
          then>because then>contraction then>noun then>particle unit>other verb>article verb>er verb>hello
          verb>object verb>or verb>owner verb>pointer verb>s want>to
        `,
      ],
      [
        -0.5,
        `
          adjective>adjective adverb>because adverb>other amount>of and>never and>noun and>subject and>then
          article>particle article>preposition be>subject because>article because>ing because>never because>noun
          because>verb but>contraction contraction>adverb contraction>be contraction>because contraction>er
          contraction>preposition contraction>verb do>pointer do>subject hello>noun kit>article kit>subject
          never>preposition noun>person noun>s number>amount number>hello number>preposition or>article
          order>number other>article owner>er owner>est owner>order owner>other part>because part>verb person>verb
          pointer>other preposition>contraction preposition>subject s>never subject>article subject>because
          subject>do subject>ed subject>owned then>verb unit>article
        `,
      ],
      [-0.75, 'because>preposition order>owned'],
    ],
    'word-first-kind': [
      [
        0.75,
        `
          eight>preposition feel>because four>number if>verb in>particle keep>number lean>verb no>other
          out>preposition sit>part so>and two>subject you're>verb
        `,
      ],
      [
        0.5,
        `
          all>adjective any>verb anybody>verb arms>part ask>because band>and bend>preposition both>contraction
          both>part breathe>contraction breathe>subject bring>and bring>contraction bring>verb change>and chin>verb
          come>owner cross>kit cross>preposition did>number don't>contraction drop>noun ease>never elbow>other
          elbows>noun first>preposition float>and for>preposition for>verb front>because front>verb good>adverb
          good>contraction good>other grab>article heel>part heels>verb hips>number hold>and hold>part i'm>s
          i>because if>kit it's>be it's>because it's>preposition it's>subject it's>verb keep>never keep>praise
          keep>subject knee>and knuckles>preposition land>verb leave>contraction legs>verb let>preposition lie>part
          lift>verb long>preposition mind>article morning>verb no>and no>article no>because no>contraction no>never
          no>object no>subject not>and not>other off>noun okay>contraction on>preposition one>article one>particle
          one>subject or>because palms>part pause>because pull>and pull>hello push>adjective put>part
          quiet>adjective rock>adjective same>number shake>other slide>part slide>preposition slow>because
          slow>number small>particle so>adjective thank>hello that's>pointer that>hello the>hello the>or then>hello
          then>then there's>number think>adverb to>article top>verb tuck>verb twelve>number twenty>verb up>particle
          use>and use>or walk>adjective walk>verb watch>subject we>subject when>article while>subject with>number
          you'd>article you'll>and
        `,
      ],
      [
        0.25,
        `
          10>adjective 30>article 30>number 3>article 3>other 40>preposition 4>article 4>contraction 5>other
          8>number a>amount a>never about>preposition actually>verb all>noun all>part all>verb alright>hello
          and>hello another>noun anyway>subject arm>noun arms>adverb arms>article arms>because as>adverb as>and
          as>then ask>owner baby>part back>verb band>noun bar>kit bar>part before>contraction before>subject
          beginners>adverb bend>part bend>then big>adjective big>hello big>noun body>part brace>verb breath>unit
          breathe>verb bridges>then bring>adjective build>noun bum>part but>because but>preposition chest>and
          chest>noun climbers>verb come>adjective come>adverb come>because come>subject count>particle
          crawl>particle cross>number curls>particle do>amount do>article do>or don't>kit don't>noun don't>s
          done>verb down>and down>particle draw>noun draw>preposition drive>adjective drive>noun drive>verb
          drop>then eight>number eighty>adjective elbow>part elbows>adverb elbows>never every>and every>hello
          feet>adverb feet>part feet>verb fifteen>then find>other find>part find>verb fingers>particle
          first>article first>subject five>because five>part flex>verb for>pointer forty>other forty>preposition
          front>particle full>part get>have get>part get>verb go>adverb go>because good>number good>subject
          grab>verb half>verb hands>or hands>verb hang>and hang>because have>part have>verb he>other head>article
          hello>and here's>adjective here's>s hips>particle hiya>verb hold>hello hold>verb how's>article i'd>but
          i'll>subject i'll>then i'm>adjective i'm>subject i've>other i've>owner i>adjective i>do if>do if>hello
          if>never in>article in>number inhale>verb instead>verb is>article isn't>because it's>adverb it's>owned
          it>do jean>verb jump>part jump>verb just>contraction just>ing just>part just>then keep>contraction
          knee>noun kneel>verb knees>contraction knees>or knees>other land>adjective last>article last>hello
          last>particle lean>noun lean>part left>other leg>adjective lengthen>verb let's>and let's>part level>verb
          lie>other lift>because lift>noun lift>preposition lift>then lighter>or like>never lock>preposition
          long>adjective long>subject look>and look>article look>hello lose>because lovely>adverb lovely>and
          lovely>verb lower>then make>amount make>and march>adjective me>subject my>adverb my>praise next>article
          next>other next>preposition nice>praise nice>verb nine>number no>adverb no>number nobody's>because
          nobody's>other nobody>subject nose>owner not>pointer now>because now>part off>order oh>article
          okay>adjective okay>subject on>noun on>part once>verb one>amount one>compared one>noun one>verb
          operated>part or>and or>pointer or>subject other>does pain>because peel>verb pick>contraction pinch>and
          press>then pretend>and pull>adjective pull>noun pull>part punch>particle put>subject quick>and quick>part
          quick>preposition reach>then reach>verb remember>and rest>then ribs>never right>adjective right>kit
          right>number right>verb rings>verb roll>particle round>order rows>verb same>adjective same>and
          same>contraction second>adjective second>part see>verb set>subject settle>number shake>number she>and
          shins>preposition shoulders>part shoulders>verb shove>and shut>contraction side>article side>part
          side>subject sit>other sit>subject sit>then sitting>preposition six>adjective six>and six>because
          sixty>and slide>ing slow>article so>adverb so>er soft>verb soften>noun somebody's>be somebody>and
          somebody>object somebody>verb sorry>other sort>verb squash>and squash>noun squat>particle squat>subject
          squats>noun squeeze>noun stand>hello stand>never stand>noun standing>article standing>kit
          standing>preposition start>preposition stay>pointer steady>hello steady>pointer step>adjective
          step>article step>never step>then step>verb stop>contraction stop>preposition stop>s straight>article
          straight>particle straighten>noun straps>because swing>article swing>verb switch>adjective take>pointer
          tall>adjective tall>part tall>preposition ten>ing ten>other thank>verb that's>amount that's>because
          that's>kit that's>order the>article then>because then>number there's>never there's>noun there's>verb
          there>other there>preposition these>preposition they're>never they>adjective think>ing think>preposition
          thirty>verb this>because this>particle those>verb three>hello three>noun three>number three>owned
          three>praise thumbs>article tighten>preposition tip>adjective tip>other toes>because toes>noun
          tonight>does tonight>preposition top>because tuck>contraction turn>and turn>because turn>hello turn>kit
          turn>other twelve>subject two>article two>or two>part two>praise uh>contraction um>article up>adverb
          wait>particle walk>and walk>er we'd>subject we'll>adjective we'll>and we'll>noun we'll>other
          we're>because we're>number we've>and we>contraction weight>pointer well>adverb what's>other when>other
          which>contraction which>preposition wrap>and yes>subject you're>hello you're>part you're>preposition
          you're>s you've>adjective you've>and you've>have you>because your>amount your>because your>other
        `,
      ],
      [
        -0.25,
        `
          10>and 10>noun a>noun after>article after>verb all>subject and>amount and>be and>because and>compared
          and>did and>do and>does and>part and>particle and>then any>article arms>adjective arms>other arms>subject
          arms>verb as>article as>contraction as>verb at>contraction back>amount back>article back>particle
          because>adverb because>preposition because>subject beginners>number bend>and bend>article both>and
          both>verb breathe>because but>and but>contraction calf>part check>verb chest>verb chin>and come>article
          come>particle come>preposition do>and do>ing do>never don't>or don't>particle down>number
          down>preposition drag>part drive>part eight>article eight>be eight>because eight>part elbows>preposition
          er>contraction feet>adjective feet>noun fifteen>subject find>subject five>article five>verb flat>or
          flatten>and for>subject forearm>part forty>and four>and from>noun front>owned give>verb go>and
          go>contraction go>other go>preposition grab>kit hand>part hands>other hands>subject hang>preposition
          hang>verb have>and have>subject he's>and he>because heels>particle here's>because hip>part hips>adjective
          hold>because hold>preposition i'll>and i'm>part i'm>preposition i'm>verb i've>and i've>article i>article
          i>never i>number i>preposition i>verb if>adjective if>contraction if>does if>ing if>or if>subject is>or
          is>subject it's>noun it>adjective it>article it>or it>other it>verb jump>and jump>or just>adjective
          just>noun just>number keep>adjective keep>and keep>because keep>particle keep>verb knee>article
          kneecap>article knees>kit l>verb land>because last>contraction last>preposition lean>adjective leg>verb
          legs>adjective legs>because let>adjective let>and let>do let>never let>other let>subject lie>then
          lift>article lift>subject like>article like>contraction like>preposition long>part low>verb
          lower>preposition make>or make>subject mind>verb minute>number most>verb my>and my>pointer my>preposition
          never>verb nice>and ninety>amount no>adjective no>ing no>part no>particle no>preposition not>adjective
          not>part nothing>article off>preposition off>verb okay>article okay>noun on>subject one>preposition
          one>then only>because or>other or>preposition other>adjective other>verb out>article out>part palms>verb
          peel>subject pick>number pick>verb press>adverb press>article press>part press>particle pull>article
          pull>never push>hello push>part push>particle put>because put>preposition quick>article quiet>part
          reach>and rest>article rest>contraction rest>part rest>preposition reverse>and ribs>verb right>article
          right>part right>subject right>then roll>preposition same>because same>other same>praise scoot>verb
          second>because shins>and shins>article shoulders>particle sit>preposition sit>verb sitting>part
          six>number six>subject skin>never slide>because slow>contraction slow>particle slow>preposition so>hello
          so>particle so>pointer so>unit soft>part somebody>because somebody>subject sorry>preposition
          sort>contraction squat>part squeeze>and squeeze>part squeeze>preposition squeeze>then stand>adjective
          stand>contraction start>verb stay>contraction stay>verb step>and step>because stop>and stop>article
          stop>never stop>verb sure>and switch>part take>noun take>verb tattie>contraction ten>and thank>subject
          thanks>subject that's>other that's>part that's>preposition the>adjective the>be the>kit the>never
          the>other the>owned the>preposition then>adjective then>article then>subject there>and there>subject
          think>verb thirty>adjective thirty>ing this>and this>part three>contraction three>part toes>adverb
          toes>article tonight>contraction tuck>noun turn>adjective turn>verb twelve>because two>kit two>then
          um>subject up>adjective up>noun use>verb walk>contraction walk>number walk>other we'd>and we'll>because
          we'll>subject we're>contraction we've>because we've>number we>and what's>subject when>subject
          which>because with>preposition wrists>part you'd>verb you're>subject you've>number you've>verb
          you>adjective you>adverb you>contraction you>number you>part you>verb your>adverb zip>because
          zip>preposition
        `,
      ],
      [
        -0.5,
        `
          a>contraction arms>preposition because>and breathe>and breathe>part cross>and did>article
          don't>preposition feel>verb feet>and five>number good>hello i'm>and i>part if>and if>number
          if>preposition if>s it's>and keep>noun knee>never last>subject leave>and my>article next>contraction
          now>contraction now>verb okay>and pretend>contraction pull>verb quick>verb round>number ten>article
          the>adverb the>part the>subject the>verb then>particle then>verb there's>and there's>because
          there's>preposition three>subject two>particle two>preposition we>because when>and
        `,
      ],
      [-0.75, 'no>hello step>subject'],
      [-1, 'let>verb so>verb'],
    ],
    classes: [
      [0.75, 'auxiliary>and opener>contraction unit>number verb>verb'],
      [
        0.5,
        `
          article>and article>article article>pronoun auxiliary>contraction because>opener ing>manner ing>part
          ing>verb kit>part ly>contraction manner>article manner>never manner>number number>because
          number>contraction number>opener opener>article opener>part other>never part>number part>part
          preposition>never pronoun>part unit>kit unit>pronoun verb>and
        `,
      ],
      [
        0.25,
        `
          article>contraction article>ly article>never because>kit contraction>contraction ing>kit kit>article
          kit>contraction kit>number ly>auxiliary ly>ing ly>number never>contraction never>pronoun number>article
          number>ing number>never number>number number>pronoun opener>other other>contraction other>ly other>manner
          other>number part>article part>ly part>verb preposition>kit preposition>verb pronoun>article
          pronoun>pronoun unit>verb verb>never
        `,
      ],
      [
        -0.25,
        `
          and>article and>auxiliary and>manner and>other and>part article>ing article>kit article>manner
          article>number article>opener article>other article>part article>preposition article>unit
          auxiliary>article auxiliary>auxiliary auxiliary>number auxiliary>opener auxiliary>part
          auxiliary>preposition auxiliary>verb because>article because>auxiliary because>manner because>preposition
          because>pronoun contraction>article contraction>auxiliary contraction>because contraction>ing
          contraction>number contraction>other contraction>verb ing>article ing>other ing>pronoun ing>unit
          kit>preposition ly>opener manner>preposition never>article never>auxiliary never>ing never>preposition
          never>verb number>other number>part number>unit opener>number opener>preposition other>auxiliary
          other>preposition other>unit part>auxiliary part>ing part>manner part>opener part>other part>preposition
          preposition>article preposition>ing preposition>ly preposition>manner preposition>pronoun
          pronoun>auxiliary pronoun>ly pronoun>manner pronoun>other pronoun>preposition pronoun>verb
          unit>preposition verb>auxiliary verb>manner verb>number verb>opener verb>other verb>preposition
        `,
      ],
      [
        -0.5,
        `
          and>contraction and>never and>number and>opener and>pronoun and>verb article>verb auxiliary>ing
          auxiliary>never auxiliary>other because>contraction because>number contraction>never contraction>opener
          ing>preposition unit>because unit>manner
        `,
      ],
    ],
    'kind-before': [
      [0.25, 'day noun particle s'],
      [-0.25, 'article be do never object order owner praise preposition'],
      [-0.5, 'and because but contraction did est have modal of or to'],
      [-1, 'owned'],
    ],
    'kind-after': [
      [0.5, 'then'],
      [
        -0.25,
        `
          amount did do ing kit modal noun object order owner particle person pointer preposition s
        `,
      ],
      [-0.5, 'be compared day does ed er of to unit want'],
    ],
    'kind-around': [
      [
        0.75,
        `
          adverb>adjective>noun article>other>adjective article>other>article article>verb>subject
          contraction>adjective>number owner>part>article verb>other>part
        `,
      ],
      [
        0.5,
        `
          adjective>adjective>preposition adjective>amount>preposition adjective>noun>and adjective>noun>particle
          adjective>number>and adjective>other>because adjective>part>adjective adjective>part>other
          adjective>particle>number adjective>particle>preposition adjective>subject>preposition
          adjective>verb>part adverb>do>article amount>number>number and>verb>noun and>verb>number
          article>adjective>and article>adjective>because article>adjective>preposition article>amount>and
          article>ing>article article>kit>adjective article>kit>article article>kit>number article>kit>subject
          article>noun>part article>other>number article>verb>article article>verb>number be>other>and
          because>other>verb contraction>other>contraction do>subject>adjective does>adjective>verb
          does>preposition>subject hello>other>contraction hello>subject>hello hello>subject>verb ing>particle>verb
          kit>particle>adjective modal>verb>owner noun>because>contraction noun>particle>particle
          number>number>particle number>other>other number>unit>hello number>unit>number order>subject>verb
          other>adjective>part other>does>article other>part>ing other>particle>because other>s>verb
          other>subject>because owned>other>contraction owner>part>noun owner>part>part part>adverb>adjective
          part>noun>adjective part>noun>subject part>other>and part>part>because part>part>part
          part>particle>contraction part>particle>part part>s>verb particle>adjective>article
          particle>adjective>particle particle>particle>number preposition>adjective>part
          preposition>other>preposition preposition>pointer>verb preposition>subject>other
          preposition>subject>particle preposition>subject>preposition preposition>verb>article
          s>preposition>article subject>be>article subject>be>subject subject>be>verb subject>did>article
          subject>do>preposition subject>does>contraction subject>never>subject subject>particle>article
          subject>preposition>verb subject>verb>pointer subject>verb>preposition then>verb>preposition
          unit>article>verb verb>adjective>adjective verb>adjective>particle verb>noun>and verb>particle>part
          verb>preposition>adjective verb>subject>adjective verb>subject>contraction verb>verb>verb
        `,
      ],
      [
        0.25,
        `
          adjective>adjective>because adjective>adjective>number adjective>kit>adjective adjective>kit>because
          adjective>kit>contraction adjective>never>verb adjective>noun>adverb adjective>noun>article
          adjective>other>particle adjective>part>do adjective>part>subject adjective>part>verb
          adjective>particle>adjective adjective>subject>verb adjective>unit>and adjective>verb>noun
          adverb>adverb>subject adverb>article>subject adverb>particle>because adverb>particle>part
          adverb>preposition>number and>adjective>preposition and>article>other and>number>and and>number>kit
          and>other>and and>other>article and>other>part and>particle>article and>verb>adjective
          article>adjective>contraction article>adjective>owner article>adjective>then article>does>verb
          article>er>because article>ing>contraction article>kit>never article>kit>part article>kit>then
          article>kit>verb article>noun>article article>noun>number article>noun>owner article>noun>then
          article>number>preposition article>number>verb article>other>be article>other>particle
          article>part>adverb article>part>article article>part>never article>part>other article>particle>subject
          article>praise>preposition article>s>because article>s>part article>unit>and article>verb>contraction
          article>verb>s be>adjective>adjective be>ing>other be>ing>verb contraction>adjective>contraction
          contraction>did>other contraction>ing>subject contraction>ing>verb contraction>never>verb
          contraction>number>number contraction>other>number contraction>other>subject contraction>subject>and
          contraction>subject>subject do>pointer>article do>subject>number does>particle>verb ed>verb>article
          end>hello>verb hello>particle>subject hello>subject>other ing>adverb>verb ing>particle>and
          ing>preposition>other ing>subject>part ing>subject>verb ing>verb>subject kit>adverb>verb kit>noun>part
          kit>particle>subject kit>s>contraction modal>verb>adverb modal>verb>verb never>ing>contraction
          never>other>article never>preposition>subject never>verb>verb noun>adjective>kit noun>adverb>article
          noun>adverb>because noun>never>article noun>number>because noun>other>contraction noun>subject>number
          noun>subject>other noun>verb>and noun>verb>verb number>amount>number number>article>noun
          number>noun>particle number>number>adjective number>number>article number>number>part
          number>number>subject number>particle>number number>preposition>number number>subject>amount
          number>subject>noun number>unit>adverb number>unit>owner object>particle>number of>noun>number
          of>noun>preposition of>number>and of>number>article of>object>subject of>subject>and
          order>amount>particle order>subject>and order>unit>article order>unit>hello order>unit>other
          order>verb>and other>article>contraction other>hello>subject other>noun>contraction
          other>preposition>part other>subject>article other>unit>preposition owned>adjective>subject
          owner>noun>article owner>noun>preposition owner>noun>verb owner>part>amount owner>part>s
          owner>part>subject owner>particle>preposition owner>person>because part>adjective>article
          part>adjective>part part>adjective>preposition part>adjective>subject part>adverb>part part>ing>adjective
          part>noun>noun part>other>adjective part>part>verb part>particle>adjective part>particle>owner
          part>particle>preposition part>particle>then part>preposition>adverb part>verb>and part>verb>subject
          particle>adverb>part particle>adverb>preposition particle>and>article particle>number>noun
          particle>number>number particle>other>verb particle>part>article particle>particle>verb
          particle>subject>and person>does>preposition pointer>subject>part pointer>verb>article
          praise>noun>subject preposition>adjective>contraction preposition>adjective>owned
          preposition>adverb>contraction preposition>noun>part preposition>noun>subject preposition>number>because
          preposition>number>other preposition>number>particle preposition>number>to preposition>object>other
          preposition>other>and preposition>other>verb preposition>owner>hello preposition>part>and
          preposition>pointer>contraction preposition>s>and preposition>s>preposition preposition>subject>and
          preposition>subject>part preposition>subject>then s>preposition>subject subject>adjective>other
          subject>adjective>particle subject>adjective>subject subject>adjective>unit subject>because>hello
          subject>hello>adjective subject>hello>article subject>hello>contraction subject>modal>number
          subject>never>verb subject>noun>and subject>noun>number subject>number>part subject>other>and
          subject>other>verb subject>part>noun subject>part>verb subject>particle>verb subject>preposition>kit
          subject>verb>because subject>verb>other to>noun>preposition to>other>verb to>verb>article
          unit>because>subject unit>number>number unit>other>article unit>part>verb unit>particle>article
          unit>particle>subject unit>particle>verb unit>preposition>because verb>kit>particle verb>noun>article
          verb>noun>part verb>other>article verb>particle>do verb>particle>hello verb>particle>other
          verb>particle>subject verb>particle>verb verb>praise>and verb>preposition>particle
          verb>preposition>preposition verb>preposition>verb verb>subject>do verb>subject>have
        `,
      ],
      [
        -0.25,
        `
          adjective>noun>because adjective>noun>number adjective>noun>preposition adjective>other>part
          adjective>part>noun adjective>part>particle adjective>particle>verb adjective>verb>preposition
          adjective>verb>verb adverb>adjective>adjective adverb>adjective>and adverb>adjective>part
          adverb>other>article adverb>particle>and adverb>verb>contraction and>adverb>verb and>particle>subject
          and>particle>verb and>subject>verb and>verb>article and>verb>verb article>compared>subject article>ed>kit
          article>hello>and article>kit>amount article>kit>because article>kit>or article>kit>order
          article>order>number article>other>adverb article>other>kit article>other>pointer article>owned>never
          article>part>ing article>particle>and article>particle>noun article>particle>part article>person>verb
          article>praise>other article>s>adverb article>s>verb article>unit>because article>unit>particle
          article>verb>and article>verb>because article>verb>noun be>adjective>preposition be>adverb>article
          be>article>other because>adjective>because because>hello>because contraction>adjective>adjective
          contraction>did>article contraction>do>article contraction>ed>subject contraction>ing>preposition
          contraction>number>and contraction>particle>subject contraction>verb>number ed>particle>article
          ed>particle>verb hello>subject>article ing>preposition>subject kit>because>contraction
          kit>because>subject kit>does>article kit>noun>and kit>particle>and kit>particle>particle
          modal>other>article modal>verb>article modal>verb>subject never>other>because never>verb>because
          noun>hello>other noun>never>and noun>number>number noun>part>article noun>particle>other
          noun>particle>preposition noun>particle>subject noun>preposition>article noun>verb>article
          number>and>number number>kit>verb number>number>adverb number>number>and number>number>because
          number>other>subject number>to>number number>unit>because number>unit>ing number>unit>of number>unit>or
          object>hello>and of>number>then of>object>hello of>other>and of>pointer>contraction
          order>subject>preposition order>unit>preposition order>unit>subject other>because>subject
          other>does>number other>kit>subject other>noun>and other>number>other other>other>because
          other>particle>article other>preposition>article other>unit>because other>verb>verb owner>adjective>and
          owner>adjective>part owner>adjective>particle owner>hello>part owner>other>contraction owner>other>other
          owner>other>verb owner>part>be owner>part>because owner>part>number owner>part>or owner>part>particle
          owner>part>pointer owner>particle>and part>adjective>adverb part>adjective>and part>adjective>because
          part>adverb>preposition part>and>verb part>modal>verb part>noun>adverb part>noun>and part>noun>because
          part>noun>never part>number>subject part>other>article part>part>adjective part>preposition>article
          part>preposition>number part>preposition>part part>subject>never part>verb>adjective
          part>verb>preposition particle>adjective>contraction particle>adjective>part particle>adverb>because
          particle>and>verb particle>particle>preposition particle>preposition>article particle>subject>number
          particle>verb>verb pointer>particle>part preposition>adjective>noun preposition>adverb>and
          preposition>adverb>because preposition>article>adjective preposition>article>kit
          preposition>article>other preposition>article>part preposition>article>verb preposition>day>and
          preposition>noun>number preposition>noun>verb preposition>number>number preposition>number>unit
          preposition>other>because preposition>owner>part preposition>part>verb preposition>subject>because
          preposition>subject>noun preposition>subject>number subject>adjective>and subject>adjective>verb
          subject>be>number subject>does>number subject>does>preposition subject>ed>article subject>modal>verb
          subject>never>and subject>number>number subject>other>article subject>other>other subject>other>owner
          subject>part>and subject>part>particle subject>part>preposition subject>particle>adverb
          subject>particle>preposition subject>preposition>article subject>preposition>part subject>verb>hello
          subject>verb>part then>noun>and to>adjective>subject to>noun>article to>other>article to>verb>number
          unit>because>contraction unit>of>number unit>particle>preposition unit>preposition>article
          verb>article>kit verb>article>part verb>object>verb verb>other>because verb>owner>part
          verb>particle>adjective verb>particle>praise verb>particle>preposition verb>preposition>and
          verb>subject>because verb>subject>other verb>subject>particle verb>subject>preposition
          verb>subject>subject want>to>verb
        `,
      ],
      [
        -0.5,
        `
          adjective>kit>and adjective>noun>contraction adjective>noun>subject adverb>amount>verb
          article>adjective>amount article>adjective>kit article>adjective>noun article>adjective>part
          article>kit>noun article>kit>pointer article>noun>particle article>noun>subject article>other>because
          article>other>noun article>other>or article>part>contraction article>person>contraction be>adjective>and
          be>ing>contraction be>other>verb because>subject>verb contraction>adjective>and
          contraction>because>contraction end>hello>other number>subject>and of>number>because order>unit>and
          other>noun>because other>number>and other>other>and other>other>subject other>part>verb
          part>hello>contraction part>hello>verb part>particle>because particle>adverb>and
          particle>preposition>subject particle>s>verb particle>subject>verb preposition>adjective>preposition
          preposition>other>part preposition>unit>number subject>verb>then unit>preposition>and verb>adjective>and
        `,
      ],
      [-0.75, 'adjective>adjective>adjective article>adjective>subject verb>subject>number'],
    ],
    'word-kind': [
      [1, 'on>number'],
      [0.75, 'is>verb minute>verb side>adjective up>other'],
      [
        0.5,
        `
          2>number again>and again>order arm>verb away>verb back>article back>subject bar>article
          breathe>contraction can>subject did>article did>preposition done>verb down>part down>verb find>owner
          forward>particle go>noun good>contraction hand>part heavy>verb hips>part in>adverb in>part in>subject
          in>verb it>contraction it>kit it>other it>verb knee>adjective know>preposition left>verb leg>and
          leg>number lift>article lift>particle long>noun mat>contraction no>number no>other no>subject off>verb
          on>contraction on>part one>ing one>verb ones>other out>part plank>part rest>verb right>kit rings>because
          side>number sit>part so>noun stop>article tall>part that>contraction that>verb thighs>and
          thing>preposition three>and top>other two>verb up>order up>particle up>verb you>hello
        `,
      ],
      [
        0.25,
        `
          2>other 3>number 8>and a>hello about>noun again>number again>preposition apart>preposition are>article
          are>subject arms>number arms>part back>adjective back>because back>contraction back>then
          belly>preposition bench>preposition bit>because bottom>particle bottom>verb box>article breathe>subject
          breathing>subject chair>because chair>subject chest>verb chin>part done>particle down>article
          down>contraction down>particle drink>verb dumbbells>particle each>verb ears>preposition eight>and
          eight>never eight>number elbows>part end>preposition first>part floor>adverb floor>and floor>do
          floor>hello floor>subject floor>then floor>verb foot>adjective foot>article foot>number foot>verb
          forward>part four>adjective four>and front>preposition go>article go>order go>part goes>and grip>article
          ground>verb half>and hands>and head>preposition height>part here>contraction high>preposition
          hip>adjective hips>adjective hips>and hips>number hold>verb in>and in>er is>hello it>never it>noun
          it>order it>owner it>part it>subject knee>other knees>preposition knees>verb know>article leg>subject
          legs>and like>number like>subject line>part long>and long>subject lovely>other low>and lower>and
          me>contraction middle>contraction middle>verb mind>article more>number morning>subject nearly>adverb
          next>noun next>other nice>other nice>praise nine>contraction no>contraction now>subject off>contraction
          off>number on>other on>verb once>preposition one>adjective one>and one>article one>contraction one>number
          one>particle one>pointer one>preposition out>number out>subject over>verb pause>and please>subject
          pull>verb quick>part right>verb round>contraction row>number rows>verb seconds>amount seconds>number
          sets>adverb seven>and seven>number shoulders>and shoulders>part shoulders>preposition side>verb
          sit>subject sitting>preposition slow>because slowly>part so>article spot>preposition squats>number
          stand>article stand>because stop>preposition straight>verb swinging>contraction tail>preposition
          tall>adjective taps>verb ten>number ten>preposition that's>because that>number that>s them>adjective
          them>subject then>preposition there>number there>verb these>and this>other three>because three>noun
          three>verb through>verb time>hello times>and to>hello today>because toe>because toe>part toes>adjective
          toes>preposition toes>verb top>preposition towel>and turn>preposition two>contraction two>part
          um>preposition up>adverb up>and up>number up>owner up>part up>praise ups>and way>because way>verb
          we>article week>and were>ing wide>and work>number you>part
        `,
      ],
      [
        -0.25,
        `
          a>adjective a>kit a>noun a>number a>other a>part a>verb about>number all>article all>number and>adjective
          and>hello and>never and>noun and>other and>part and>particle and>subject are>ing arm>and arms>adjective
          arms>preposition as>hello as>subject at>article at>number at>part away>part back>does back>other back>s
          bar>other bar>verb before>subject behind>subject behind>verb bell>verb belly>other bench>and bend>because
          bent>verb big>part body>preposition bottom>part breath>and breath>preposition breathe>particle bus>never
          can't>verb can>verb chest>and come>and come>particle curls>part day>because dead>adverb dead>verb
          do>article do>number doesn't>verb don't>other done>article down>and down>kit down>number down>preposition
          eight>article eight>verb eighty>number elbows>and even>because eyes>adjective face>article feet>and
          feet>particle fine>verb first>subject five>because five>contraction floor>noun floor>particle
          foot>particle for>article for>subject forward>and four>because front>noun get>article go>adverb
          go>because go>other go>particle goes>adjective goes>particle good>amount good>hello got>article
          half>article hand>preposition hands>verb hang>preposition heavy>part heel>because heels>and here>and
          hip>noun hips>noun hips>preposition hips>verb hold>article i>other i>verb if>article if>contraction
          if>subject in>adjective in>kit it>adverb it>s just>article keep>noun knee>adverb knee>because
          knee>preposition know>contraction last>but last>number leg>article leg>other legs>verb let>verb
          level>verb lift>preposition lifts>number like>article line>preposition look>preposition lunges>and
          me>subject metres>and metres>number middle>part minutes>because minutes>preposition much>verb next>unit
          nice>and no>ing no>s not>article now>article now>part of>article of>other of>subject off>article
          off>because one>hello ones>number only>verb open>preposition opposite>part other>subject other>verb
          out>adjective out>adverb over>and people>verb press>part press>verb quiet>part ready>and rest>number
          rings>and rings>verb round>article round>number says>number second>verb seconds>subject seconds>verb
          see>article see>contraction see>subject set>article shoulder>contraction shoulders>verb six>and six>s
          slowly>adjective so>contraction so>number sorry>preposition squat>and standing>verb station>subject
          stay>verb stays>adjective still>verb straight>and straight>particle straight>preposition take>number
          ten>adjective thank>subject that>part the>adjective the>hello the>kit the>noun the>order the>other
          the>owned the>part the>verb them>article them>other them>particle then>number then>verb there>and
          there>be thigh>and thighs>verb thirty>number this>hello those>contraction three>number till>contraction
          till>subject time>because times>article to>adjective to>article to>other to>part toes>particle
          too>adjective tucked>particle up>compared up>hello up>or up>subject up>to wall>because wall>noun
          warm>particle we'll>verb what>contraction what>subject while>contraction with>adjective with>article
          you>article you>have you>never your>adjective your>kit your>number your>other your>part
        `,
      ],
      [
        -0.5,
        `
          and>contraction and>number and>then and>verb back>particle bar>and don't>verb feet>verb foot>and
          for>number forty>number forward>preposition head>because hip>contraction hundred>and knee>contraction
          kneecap>verb knees>adjective know>part like>contraction little>verb long>verb number>number of>number
          one>part out>because pretend>contraction right>part right>subject round>verb shoulder>part side>because
          side>contraction sit>verb time>subject time>verb times>number to>number twenty>number two>number
          way>particle we>verb week>number you>verb
        `,
      ],
      [-0.75, 'just>verb to>verb'],
    ],
    ahead: [
      [1, 'and>if and>lower have>a off>you'],
      [
        0.75,
        `
          and>bring and>i and>there and>we'll both>hands by>the come>back i>know if>it it>isn't it>should keep>them
          like>the like>you've same>thing so>that's squeeze>your this>is up>up
        `,
      ],
      [
        0.5,
        `
          3>sets a>chair a>few a>minute about>a all>of and>change and>it's and>no and>push and>slide and>up and>we
          arms>out as>if back>leg back>squat back>up bar>on both>sides bring>a but>not can>you carry>on come>in
          do>not don't>let down>two even>if feet>under find>a five>more for>three forty>seconds goblet>squats
          head>on hike>it hold>for hold>on i>can i>don't i>see i>want is>it is>that it's>only it>doesn't just>the
          keep>it leg>swings legs>out let>go lie>on lift>one like>somebody's lying>on me>and mind>the nice>and
          no>it's not>the or>the or>you other>one out>as pull>the push>it put>it rack>it rest>a roll>to same>again
          second>lot slow>down small>and so>if soft>knees stop>and ten>of that's>how that's>the that's>your
          the>first then>we three>rounds three>to twice>through two>three up>on where>the which>is with>a
          you're>not you>put you>stop
        `,
      ],
      [
        0.25,
        `
          10>and 20>seconds 2>1 5>and a>cushion a>hip a>pause about>ninety about>the about>twenty all>right
          and>down and>hang and>he and>leave and>now and>pull and>that's and>there's and>this and>three and>tuck
          and>you'll arms>straight as>far back>flat back>foot back>heel back>of bar>over bending>the between>your
          both>feet breathe>out bring>them by>your calf>stretch check>the come>out do>a does>this down>and down>at
          down>for down>till down>to drive>through drop>the each>one ease>off eight>of empty>bar every>single
          eyes>on feet>flat feet>hip feet>together feet>wide fingertips>on five>six flat>back foot>up for>3 for>six
          forearm>plank forty>five four>and four>breaths four>five from>the get>your go>don't go>keep go>on
          grab>your half>the hand>over hands>behind hands>off hands>on hands>over hands>up hang>off hanging>off
          he>was heel>and heel>on heels>a hold>the hollow>hold i'm>not i>love i>mean i>thought if>they in>as
          in>through in>two in>with is>all isn't>it it's>on it>helps it>was just>you keep>a knee>in knee>raises
          knees>don't knees>under land>soft last>round lead>with lean>back lean>forward lean>in leave>it leg>up
          let>it like>a like>an like>there's long>arms look>at minute>between mountain>climbers my>first near>hand
          near>the ninety>seconds no>more no>rest no>shame no>weight not>your on>my on>to on>you one>foot one>hand
          one>more one>side one>then one>two one>up or>just other>knee out>coming press>the push>the push>ups
          quick>feet quiet>feet rest>for reverse>lunges ribs>and right>arm round>one same>time set>the shake>it
          shake>the sit>down sit>straight six>on slow>don't snap>the so>the so>you some>people sort>of split>squats
          squat>and stand>and stand>it stand>up standing>with step>and straight>back straight>into support>hold
          swap>at swing>it take>your tell>me ten>seconds ten>steps thank>you that's>all that>knee that>was the>dead
          the>good the>long the>opposite the>press the>second the>shoulders then>let then>swap then>switch
          there's>no these>at three>four tuck>your twenty>seconds two>to until>the up>by up>we'll use>your wait>for
          walk>back walk>to walk>your watch>for we're>on well>done wet>leaves when>it while>i wider>than with>some
          you'll>do you'll>have you>can't you>don't you>have you>hold you>look you>skip your>face
        `,
      ],
      [
        -0.25,
        `
          a>bit a>couple a>day a>foot a>little a>side a>skip a>touch a>week after>that all>fours and>drop and>eight
          and>feel and>five and>half and>i'm and>just and>knees and>lie and>look and>make and>press and>put
          and>round and>shake and>she's and>sit and>walk arm>and as>it as>the as>we as>you ask>me at>your back>down
          back>on before>you behind>you bend>your blood>pressure breathe>into but>i chest>up come>down come>on
          do>the don't>like don't>want don't>yank down>if draw>the drop>your eight>and eight>don't elbow>under
          elbows>under every>day every>rep eyes>up facing>the find>the five>breaths five>four five>seconds flat>on
          for>ten forearms>on go>home go>to had>a half>way hands>down here>we hold>of hundred>and i'll>show i>am
          i>said i>started if>you if>your in>between in>front is>a is>the it's>that it's>the it's>too it's>up
          it>and it>don't it>down it>in it>up just>lift just>outside keep>hold lean>your legs>long let>me let>you
          level>with like>it's line>with lower>your mini>squats next>week nine>ten not>to now>and number>two of>the
          of>them of>those of>you of>your on>it on>the one>and one>arm one>is one>of one>way pick>up roll>back
          roll>over shake>your sit>your slide>forward slow>on so>that so>this some>of somebody>asked stay>for
          stay>on stay>tall step>back step>it straight>leg swap>over that's>one the>back the>cat the>floor the>hips
          the>knee the>next the>same the>swing the>wall the>way the>whole then>it's then>sit then>straight then>you
          these>are thirty>seconds three>is three>seconds three>sets three>times through>the to>the to>your
          twelve>and two>seconds up>in up>out we're>not we>do when>you've with>your you're>going you're>leaning
          you're>on you've>a you>can you>come you>go you>want your>back your>breath your>shoulders
        `,
      ],
      [
        -0.5,
        `
          and>a and>back and>hold and>i've and>lean and>not and>one and>out and>row and>stand and>tell and>they
          as>well at>the come>to eight>a five>if for>a i>did if>the if>you're lift>it on>a one>the out>of pull>your
          put>one slide>your so>it that's>been this>time use>a when>you while>you with>the you'll>want
        `,
      ],
      [-0.75, 'or>so'],
      [-1, 'and>it'],
    ],
    'kind-behind': [
      [
        1,
        `
          article>adjective>subject article>subject>be preposition>owner>part to>article>part
        `,
      ],
      [
        0.75,
        `
          adjective>and>adjective adjective>of>subject adverb>article>unit amount>of>number
          because>contraction>other because>subject>preposition noun>particle>noun noun>preposition>subject
          of>owner>part owner>est>noun particle>article>kit particle>owner>part particle>subject>verb
          preposition>owner>adjective preposition>owner>kit preposition>owner>particle preposition>subject>part
          subject>hello>subject subject>noun>number subject>particle>adjective subject>preposition>s
          then>article>noun verb>other>particle verb>to>verb
        `,
      ],
      [
        0.5,
        `
          adjective>adjective>kit adjective>other>noun adjective>subject>particle adjective>to>adjective
          adverb>and>contraction amount>preposition>number article>adjective>noun article>adjective>other
          article>adjective>verb article>ing>amount article>other>adverb article>other>hello article>other>kit
          article>other>modal article>particle>subject be>adverb>adjective be>ing>other because>number>unit
          because>subject>be because>subject>ed but>never>other contraction>be>ed contraction>did>noun
          contraction>ing>adjective contraction>particle>subject contraction>preposition>subject do>article>ing
          ed>preposition>other end>hello>subject have>article>amount hello>verb>preposition ing>other>verb
          ing>preposition>subject kit>be>adjective kit>noun>number kit>part>adverb kit>part>noun kit>particle>and
          kit>preposition>adverb modal>verb>subject noun>adjective>part noun>be>adjective noun>part>adjective
          noun>preposition>number number>article>part number>number>adjective number>number>number
          number>number>praise number>of>object number>of>subject number>unit>particle number>unit>preposition
          object>particle>adjective object>verb>particle of>article>noun order>then>verb other>order>amount
          other>other>noun other>verb>number owner>adjective>verb part>article>person part>be>ing
          part>does>particle part>other>number part>other>subject part>preposition>part part>to>part
          particle>and>preposition particle>article>other particle>part>particle particle>preposition>subject
          particle>subject>hello pointer>be>adjective preposition>article>adjective preposition>article>day
          preposition>article>hello preposition>article>other preposition>article>part preposition>article>s
          preposition>article>unit preposition>object>other preposition>part>noun preposition>subject>adjective
          s>article>kit s>number>number subject>be>other subject>noun>subject subject>of>pointer
          subject>other>subject subject>part>noun subject>part>particle subject>preposition>noun
          subject>preposition>verb subject>subject>be subject>verb>because subject>verb>hello subject>verb>noun
          to>article>hello to>noun>preposition to>verb>adjective unit>or>because unit>preposition>pointer
          unit>preposition>subject unit>verb>verb verb>adjective>adjective verb>and>verb verb>owner>unit
          verb>subject>verb
        `,
      ],
      [
        0.25,
        `
          adjective>article>other adjective>noun>adjective adjective>noun>adverb adjective>noun>particle
          adjective>noun>preposition adjective>noun>verb adjective>other>adverb adjective>other>subject
          adjective>part>adverb adjective>part>do adjective>part>particle adjective>particle>unit
          adjective>subject>noun adjective>subject>preposition adjective>unit>preposition adjective>verb>number
          adjective>verb>part adverb>article>part adverb>contraction>adverb adverb>number>unit amount>article>unit
          amount>does>preposition amount>of>ing and>article>noun and>article>order and>article>other
          and>contraction>did and>contraction>ing and>number>particle and>number>unit and>other>noun
          and>other>subject and>part>particle and>particle>number and>particle>verb and>subject>do
          article>adjective>adverb article>adjective>er article>adjective>kit article>adjective>part
          article>adjective>unit article>adverb>kit article>compared>subject article>er>adverb article>ing>because
          article>ing>preposition article>kit>particle article>noun>particle article>order>subject
          article>other>adjective article>other>er article>other>number article>other>part article>other>pointer
          article>other>s article>owned>adjective article>owned>ing article>part>kit article>part>noun
          article>part>or article>part>particle article>part>verb article>particle>noun article>particle>other
          article>praise>amount article>s>adverb article>s>verb article>unit>number article>verb>particle
          be>adjective>number be>adverb>article because>article>other because>be>subject because>contraction>ed
          because>contraction>verb because>subject>did because>subject>does because>subject>s because>subject>unit
          contraction>adjective>particle contraction>adverb>amount contraction>article>ing contraction>article>kit
          contraction>article>verb contraction>do>verb contraction>ing>number contraction>ing>particle
          do>number>unit do>pointer>number do>subject>adverb do>subject>number does>verb>particle have>article>noun
          hello>part>preposition hello>particle>part hello>preposition>number hello>preposition>pointer
          hello>subject>other ing>article>other ing>article>part ing>number>unit ing>particle>number
          ing>preposition>noun ing>subject>be kit>adverb>particle kit>be>other kit>does>article kit>other>noun
          kit>preposition>number kit>verb>particle kit>verb>preposition modal>do>number modal>hello>subject
          modal>verb>article modal>verb>particle never>noun>subject never>owner>part never>verb>other
          noun>article>order noun>do>subject noun>noun>noun noun>noun>particle noun>noun>preposition
          noun>noun>subject noun>number>number noun>preposition>noun noun>verb>subject number>article>adjective
          number>article>noun number>number>article number>number>other number>number>subject number>of>pointer
          number>part>particle number>preposition>subject number>subject>verb number>then>number number>to>number
          number>unit>adverb number>unit>article number>unit>because number>unit>noun number>verb>noun
          number>verb>preposition object>number>unit of>article>part of>number>then of>object>particle
          of>owner>other of>owner>particle order>number>unit order>of>article order>unit>hello
          order>unit>preposition other>and>noun other>and>verb other>article>other other>kit>particle
          other>never>other other>other>subject other>owner>s other>preposition>part other>subject>number
          other>verb>subject owned>ing>preposition owner>hello>part owner>order>subject owner>order>unit
          owner>other>number owner>other>unit owner>owned>adjective owner>part>ing owner>part>number
          owner>particle>s owner>person>does part>and>part part>and>then part>article>amount part>article>unit
          part>article>verb part>contraction>verb part>ed>preposition part>modal>verb part>number>number
          part>part>noun part>preposition>adjective part>subject>never particle>article>adjective
          particle>contraction>ing particle>kit>preposition particle>never>adverb particle>noun>subject
          particle>number>number particle>of>subject particle>part>adjective particle>part>ed
          particle>part>preposition particle>particle>particle particle>preposition>adjective
          particle>subject>modal particle>subject>never particle>subject>part particle>verb>particle
          person>do>pointer person>does>preposition pointer>other>preposition praise>and>verb preposition>and>verb
          preposition>article>ing preposition>article>owned preposition>article>preposition
          preposition>because>pointer preposition>ing>subject preposition>kit>noun preposition>noun>because
          preposition>number>article preposition>pointer>kit preposition>preposition>pointer
          preposition>verb>adjective preposition>want>particle s>adverb>preposition s>hello>preposition
          s>part>adjective s>part>particle s>particle>preposition s>preposition>subject subject>adjective>kit
          subject>adjective>noun subject>adjective>other subject>adjective>unit subject>adverb>do
          subject>and>number subject>and>particle subject>article>verb subject>be>adverb subject>did>article
          subject>did>other subject>does>particle subject>modal>other subject>never>preposition
          subject>other>particle subject>part>article subject>particle>and subject>preposition>kit
          subject>verb>other subject>verb>particle to>article>kit to>owner>part to>part>noun to>verb>hello
          to>verb>object to>verb>particle to>verb>preposition unit>adverb>preposition unit>and>number
          unit>article>adjective unit>number>number unit>of>number unit>order>unit unit>other>particle
          unit>preposition>owner unit>subject>did verb>and>amount verb>and>particle verb>article>er
          verb>article>person verb>kit>particle verb>object>adjective verb>object>verb verb>part>adjective
          verb>part>other verb>part>preposition verb>particle>never verb>pointer>particle verb>preposition>particle
          verb>subject>adverb verb>subject>be verb>subject>preposition verb>verb>verb want>article>kit
          want>to>other
        `,
      ],
      [
        -0.25,
        `
          adjective>adjective>hello adjective>adjective>particle adjective>and>hello adjective>and>particle
          adjective>article>adjective adjective>part>ed adjective>part>noun adjective>part>part
          adjective>unit>hello adjective>verb>preposition adverb>preposition>number adverb>preposition>subject
          adverb>verb>adjective and>article>adjective and>article>kit and>article>part and>never>verb
          and>particle>adjective and>particle>praise and>particle>s and>subject>did and>subject>other and>then>verb
          and>verb>object article>article>other article>ed>kit article>ing>particle article>kit>adjective
          article>kit>and article>kit>does article>kit>part article>kit>preposition article>noun>adjective
          article>noun>number article>part>and article>part>hello article>part>other article>verb>number
          article>verb>other be>adverb>amount be>article>amount be>article>noun because>article>kit
          because>article>owned because>contraction>adverb because>other>subject because>owner>other
          because>owner>owned compared>preposition>subject contraction>article>preposition contraction>do>number
          contraction>number>number contraction>owner>amount contraction>owner>part contraction>verb>particle
          contraction>verb>preposition contraction>verb>subject did>article>adjective did>article>amount
          did>article>kit did>article>noun do>article>other do>number>number do>subject>preposition
          does>article>other does>to>other hello>article>amount hello>subject>noun hello>subject>verb
          ing>subject>number ing>verb>particle ing>verb>subject kit>article>kit kit>article>other
          kit>part>preposition kit>particle>subject kit>preposition>noun kit>preposition>subject kit>subject>part
          modal>verb>object never>verb>because never>verb>particle noun>be>other noun>contraction>other
          noun>contraction>verb noun>of>article noun>subject>particle noun>subject>preposition number>other>noun
          number>part>adverb number>part>preposition number>unit>amount number>unit>and number>unit>number
          number>unit>of of>article>other of>number>number of>object>hello of>owner>adjective or>owner>part
          order>unit>number other>adjective>unit other>article>part other>because>subject other>contraction>other
          other>hello>subject other>never>verb other>noun>particle other>owner>adjective other>owner>part
          other>owner>particle other>part>noun other>preposition>article other>preposition>noun
          other>preposition>owner owner>adjective>other owner>kit>particle owner>number>unit owner>other>kit
          owner>part>and owner>part>particle part>adjective>adverb part>adjective>verb part>adverb>adjective
          part>adverb>adverb part>and>verb part>be>other part>does>preposition part>never>other part>other>noun
          part>part>does part>particle>adjective part>particle>adverb part>particle>and part>particle>part
          part>preposition>adverb part>preposition>article part>preposition>owner part>preposition>pointer
          part>preposition>verb part>to>verb part>verb>part part>verb>verb particle>article>unit
          particle>be>adjective particle>because>adjective particle>because>subject particle>order>subject
          particle>preposition>article particle>preposition>other particle>preposition>owner
          particle>preposition>part particle>verb>adjective particle>verb>verb pointer>article>unit
          pointer>part>verb praise>part>particle preposition>adjective>other preposition>because>subject
          preposition>number>number preposition>other>does preposition>owner>order preposition>part>particle
          preposition>pointer>part preposition>subject>verb s>number>unit subject>article>adjective
          subject>article>unit subject>do>subject subject>do>verb subject>ing>subject subject>other>number
          subject>particle>number subject>preposition>adjective subject>subject>verb subject>verb>adjective
          subject>verb>adverb subject>verb>number subject>verb>part subject>verb>praise subject>verb>subject
          subject>want>amount then>subject>verb then>verb>particle then>verb>subject to>other>adjective
          to>verb>adverb unit>of>pointer verb>adjective>kit verb>article>amount verb>article>kit
          verb>article>particle verb>number>number verb>object>other verb>owner>adjective verb>owner>kit
          verb>particle>amount verb>particle>and verb>particle>because verb>particle>preposition verb>particle>verb
          verb>pointer>subject verb>preposition>subject verb>subject>part verb>subject>particle verb>subject>praise
          verb>verb>particle want>to>noun want>to>verb
        `,
      ],
      [
        -0.5,
        `
          adjective>amount>adjective adjective>article>ing and>subject>verb and>verb>particle and>verb>subject
          article>number>unit article>of>subject article>other>preposition article>part>adverb be>number>number
          because>owner>particle contraction>article>adjective contraction>article>noun contraction>article>part
          contraction>be>ing contraction>other>number do>article>part have>article>other hello>owner>part
          kit>and>particle noun>of>number noun>owner>part number>preposition>number number>unit>hello
          other>number>unit owner>part>hello owner>part>other part>be>adjective part>part>preposition
          particle>article>part particle>order>amount pointer>number>unit preposition>article>order
          preposition>article>person preposition>owner>other subject>does>number subject>modal>verb
          subject>order>unit then>article>adjective to>owner>adjective to>verb>number unit>particle>subject
          verb>article>adjective verb>article>part verb>owner>part verb>preposition>adverb verb>subject>number
          verb>subject>other
        `,
      ],
      [
        -0.75,
        `
          amount>of>subject and>owner>part because>article>part other>preposition>subject particle>adjective>part
        `,
      ],
      [-1, 'because>owner>part'],
    ],
    'kind-across': [
      [1, 'other>verb>owner'],
      [
        0.75,
        `
          adjective>and>article adjective>particle>preposition amount>amount>article never>verb>article
          noun>adjective>noun other>because>subject other>subject>does part>part>adjective praise>other>contraction
          preposition>part>particle subject>particle>number verb>other>subject
        `,
      ],
      [
        0.5,
        `
          adjective>and>because adjective>article>ing adjective>contraction>never adjective>noun>article
          adjective>other>particle adjective>part>ed adjective>subject>does adjective>verb>article
          adjective>verb>because adjective>verb>subject adverb>verb>article amount>preposition>article
          and>article>noun article>other>pointer does>adjective>amount does>particle>verb
          hello>contraction>adjective hello>subject>did ing>article>adjective ing>contraction>article
          ing>contraction>ing kit>adjective>part kit>and>adverb kit>and>because kit>article>part
          kit>hello>preposition kit>noun>number kit>part>article kit>part>preposition kit>verb>subject
          noun>adjective>part noun>adverb>and noun>adverb>preposition noun>and>contraction noun>and>subject
          noun>article>amount noun>article>number noun>contraction>number noun>noun>owner noun>number>unit
          noun>part>ing noun>preposition>subject noun>verb>preposition number>number>number
          number>particle>preposition number>then>verb number>verb>subject other>and>contraction other>article>ing
          other>article>other other>number>other other>number>preposition other>other>verb other>pointer>be
          other>preposition>other other>subject>do other>subject>want other>verb>subject part>adjective>part
          part>adjective>particle part>contraction>article part>noun>of part>number>article part>part>adverb
          part>part>part part>verb>noun part>verb>object part>verb>owner particle>adjective>subject
          particle>adverb>verb particle>and>contraction particle>and>other particle>article>part
          particle>particle>and particle>subject>part particle>verb>object pointer>number>unit
          pointer>verb>particle preposition>because>because preposition>contraction>article
          preposition>kit>preposition preposition>part>adjective preposition>preposition>owner
          preposition>subject>never s>because>contraction subject>have>article subject>number>praise
          subject>other>and subject>other>subject unit>and>number unit>number>unit unit>part>preposition
          unit>verb>object verb>adjective>part verb>article>unit verb>because>contraction verb>contraction>want
          verb>number>unit verb>order>subject verb>other>article verb>owner>s verb>part>noun verb>praise>and
          verb>subject>adjective verb>verb>particle verb>verb>preposition
        `,
      ],
      [
        0.25,
        `
          adjective>adjective>because adjective>adjective>part adjective>adjective>preposition
          adjective>adverb>because adjective>amount>adjective adjective>and>noun adjective>and>verb
          adjective>because>because adjective>because>contraction adjective>because>other adjective>because>subject
          adjective>compared>preposition adjective>contraction>article adjective>ing>particle adjective>never>verb
          adjective>owner>kit adjective>part>preposition adjective>particle>part adjective>preposition>article
          adjective>preposition>noun adjective>preposition>number adjective>preposition>verb
          adjective>subject>never adjective>subject>part adjective>subject>verb adjective>then>number
          adjective>then>verb adjective>verb>particle adjective>verb>preposition adjective>verb>to
          adverb>adverb>subject adverb>and>because adverb>article>adjective adverb>part>preposition
          adverb>subject>other adverb>subject>part amount>and>article amount>article>adjective
          amount>because>subject amount>noun>article amount>part>particle amount>verb>particle
          article>article>other article>other>article article>owned>adverb be>article>number be>subject>article
          because>preposition>number did>article>other do>because>subject do>subject>verb does>part>adjective
          hello>article>adjective hello>because>owner hello>particle>preposition hello>pointer>be
          hello>subject>modal ing>adverb>preposition ing>and>subject ing>and>verb ing>article>number ing>subject>be
          ing>subject>modal kit>and>subject kit>and>then kit>article>kit kit>never>verb kit>other>owner
          kit>part>particle kit>particle>kit kit>particle>part kit>particle>subject kit>preposition>owner
          kit>verb>article kit>verb>owner modal>verb>preposition never>noun>subject never>preposition>article
          noun>article>noun noun>because>article noun>do>subject noun>hello>other noun>number>because
          noun>number>of noun>other>contraction noun>owner>part noun>part>adverb noun>part>noun noun>particle>to
          noun>preposition>contraction noun>subject>part noun>subject>preposition noun>verb>article
          number>adjective>part number>and>amount number>and>noun number>article>unit number>have>article
          number>number>and number>number>contraction number>number>subject number>number>verb number>part>be
          number>then>number number>verb>particle order>article>other other>adjective>preposition other>and>hello
          other>and>other other>and>then other>because>other other>compared>preposition
          other>contraction>preposition other>contraction>verb other>hello>contraction other>never>verb
          other>noun>subject other>part>particle other>particle>article other>particle>of other>particle>particle
          other>pointer>verb other>preposition>because other>preposition>ing other>subject>kit other>subject>never
          other>subject>other other>subject>verb other>verb>of other>verb>particle part>adjective>amount
          part>adjective>subject part>adjective>to part>adjective>unit part>and>adjective part>and>because
          part>and>do part>and>other part>article>article part>article>compared part>article>verb
          part>contraction>ing part>do>subject part>ing>preposition part>never>article part>other>because
          part>part>and part>part>particle part>part>preposition part>particle>of part>particle>to
          part>preposition>ing part>preposition>preposition part>s>verb part>subject>verb part>then>article
          part>then>noun part>verb>preposition part>verb>subject particle>adjective>adjective
          particle>adjective>because particle>adjective>preposition particle>adverb>contraction
          particle>article>article particle>article>ing particle>because>pointer particle>contraction>article
          particle>contraction>never particle>do>subject particle>kit>particle particle>kit>preposition
          particle>never>preposition particle>never>verb particle>noun>article particle>number>noun
          particle>number>unit particle>other>subject particle>part>adjective particle>particle>because
          particle>particle>part particle>particle>particle particle>preposition>number
          particle>preposition>pointer particle>preposition>to particle>subject>hello particle>subject>number
          particle>subject>other particle>then>verb particle>verb>adjective particle>verb>number
          particle>verb>preposition particle>verb>subject pointer>adverb>article pointer>article>noun
          pointer>other>preposition praise>number>number praise>preposition>article
          preposition>adjective>preposition preposition>and>particle preposition>because>subject
          preposition>noun>noun preposition>number>particle preposition>other>adjective
          preposition>subject>adjective preposition>subject>then preposition>verb>particle s>adverb>preposition
          s>preposition>article s>subject>did s>verb>adjective subject>adjective>part subject>and>subject
          subject>article>part subject>because>contraction subject>hello>article subject>hello>subject
          subject>ing>preposition subject>ing>subject subject>kit>particle subject>never>other subject>noun>because
          subject>number>and subject>number>part subject>particle>because subject>preposition>article
          subject>preposition>part subject>subject>did subject>verb>object subject>verb>owner
          subject>verb>preposition then>article>part unit>and>then unit>article>kit unit>article>part
          unit>because>owner unit>particle>and unit>particle>subject unit>preposition>article unit>subject>ed
          unit>subject>modal unit>subject>never unit>verb>article unit>verb>verb verb>and>particle verb>and>subject
          verb>article>adverb verb>article>order verb>contraction>because verb>contraction>never
          verb>noun>preposition verb>noun>subject verb>number>kit verb>preposition>contraction verb>subject>does
          verb>subject>modal verb>subject>other verb>subject>verb verb>verb>adverb
        `,
      ],
      [
        -0.25,
        `
          adjective>adjective>unit adjective>and>other adjective>and>particle adjective>article>article
          adjective>contraction>verb adjective>do>subject adjective>noun>number adjective>other>adjective
          adjective>other>contraction adjective>owner>part adjective>part>and adjective>part>contraction
          adjective>part>does adjective>part>number adjective>part>subject adjective>particle>article
          adjective>preposition>to adjective>subject>be adjective>subject>other adjective>then>article
          adverb>adjective>part adverb>and>subject adverb>do>article adverb>subject>be adverb>subject>verb
          adverb>verb>particle amount>pointer>be amount>subject>modal amount>subject>verb amount>verb>owner
          amount>verb>subject and>verb>article and>verb>particle and>verb>subject article>adjective>noun
          article>adjective>part article>article>noun article>kit>preposition article>other>does
          article>other>preposition article>other>verb article>part>particle article>part>preposition
          because>contraction>adjective because>contraction>never because>contraction>preposition
          because>contraction>subject because>pointer>be because>subject>be because>subject>does
          because>subject>modal because>subject>never because>verb>preposition do>article>part do>never>verb
          does>article>kit does>part>preposition does>preposition>article does>verb>preposition does>verb>subject
          ed>number>unit er>contraction>number hello>because>subject hello>part>particle hello>part>preposition
          hello>particle>to hello>subject>hello hello>subject>noun ing>adverb>verb ing>owner>part
          ing>preposition>article kit>adverb>preposition kit>and>contraction kit>and>noun kit>article>other
          kit>because>owner kit>contraction>article kit>contraction>ed kit>other>noun kit>part>adverb kit>part>noun
          kit>preposition>article kit>verb>adjective modal>verb>particle never>and>verb never>verb>particle
          noun>and>number noun>article>kit noun>article>order noun>article>part noun>article>verb
          noun>because>owner noun>contraction>other noun>kit>preposition noun>preposition>article
          noun>preposition>owner noun>subject>do noun>subject>never number>adjective>amount number>adjective>kit
          number>and>number number>and>verb number>article>adjective number>because>owner number>because>subject
          number>number>because number>number>part number>of>pointer number>other>subject number>particle>of
          number>praise>and number>subject>verb number>to>number number>unit>and number>unit>preposition
          number>verb>owner object>verb>particle order>noun>article order>part>preposition other>adjective>amount
          other>and>subject other>article>adjective other>article>number other>because>be other>never>other
          other>noun>owner other>noun>particle other>number>and other>preposition>owner other>preposition>subject
          other>subject>adjective other>subject>article other>subject>part other>subject>preposition
          other>verb>article other>verb>verb owned>never>preposition owner>part>part owner>part>particle
          owner>part>preposition part>adjective>article part>adjective>noun part>adverb>particle part>article>unit
          part>because>adjective part>contraction>subject part>ing>particle part>noun>preposition part>noun>subject
          part>other>article part>other>verb part>part>be part>part>does part>part>never part>particle>because
          part>particle>part part>preposition>number part>verb>adverb part>verb>ing part>verb>to
          particle>adjective>and particle>and>subject particle>because>owner particle>because>subject
          particle>contraction>verb particle>particle>preposition particle>preposition>article
          particle>preposition>contraction particle>preposition>subject particle>subject>because
          particle>subject>verb person>verb>article pointer>part>adjective pointer>subject>have
          pointer>subject>modal praise>and>verb praise>noun>subject praise>verb>preposition
          preposition>article>adjective preposition>article>ing preposition>article>other preposition>article>part
          preposition>because>contraction preposition>never>verb preposition>number>unit preposition>owner>part
          preposition>part>part preposition>preposition>article preposition>preposition>to
          preposition>subject>amount preposition>verb>subject s>and>s s>number>unit subject>amount>preposition
          subject>and>other subject>and>verb subject>article>adjective subject>article>unit subject>contraction>ing
          subject>hello>preposition subject>particle>preposition subject>preposition>subject subject>subject>verb
          subject>verb>adverb to>verb>particle to>verb>subject unit>and>verb unit>article>adjective
          unit>because>article unit>because>subject unit>number>and unit>or>because unit>particle>because
          unit>subject>be unit>subject>do unit>verb>owner verb>adjective>preposition verb>article>ing
          verb>article>noun verb>because>other verb>noun>of verb>owner>part verb>particle>preposition
          verb>particle>subject verb>preposition>owner verb>subject>part verb>subject>particle
          verb>subject>preposition verb>verb>subject
        `,
      ],
      [
        -0.5,
        `
          adjective>and>adjective adjective>and>contraction adjective>part>verb adverb>because>contraction
          adverb>contraction>article adverb>number>unit amount>and>contraction because>contraction>did
          does>verb>particle hello>article>noun hello>contraction>verb hello>verb>subject kit>and>verb
          kit>particle>preposition kit>verb>preposition noun>and>other noun>noun>article noun>noun>preposition
          noun>number>part number>number>other number>number>preposition number>or>number other>other>preposition
          other>particle>preposition other>verb>number part>and>noun part>and>owner part>and>part part>and>particle
          part>and>then part>contraction>want part>part>noun part>verb>because part>verb>particle
          particle>and>particle particle>and>preposition particle>article>kit particle>article>other
          particle>particle>of particle>verb>owner praise>and>adjective preposition>part>to
          preposition>subject>part s>because>subject subject>number>contraction subject>number>number
          subject>verb>article unit>and>subject unit>subject>did
        `,
      ],
      [
        -0.75,
        `
          kit>and>particle kit>or>article number>and>subject other>and>article part>verb>verb particle>and>number
        `,
      ],
    ],
    behind: [
      [1, 'behind>you four>five knees>in you>land you>like'],
      [
        0.75,
        `
          a>week and>over and>three come>in come>on each>leg go>on in>front knees>bent know>what leg>up on>saturday
          press>ups roll>over seconds>down that's>it the>clock the>top wall>sit your>hands your>side
        `,
      ],
      [
        0.5,
        `
          2>1 a>block a>drink a>mat a>moment a>pair a>rest a>side a>squat a>towel after>that and>knees and>leg
          and>rows and>six at>home chest>up comes>in dead>bugs down>and each>side eighty>metres feet>down
          floor>away for>ten for>thirty hang>on heel>down hold>on i>started isn't>it it>is keep>breathing keep>hold
          knee>down knees>up last>one leaning>back leg>only legs>long morning>all of>10 of>5 of>them of>those on>it
          on>these one>two or>so other>day round>two see>you shoulder>blades shoulders>up sit>on step>back ten>no
          ten>seconds the>arm the>bed the>bottom the>hip the>last the>line the>mailbox the>morning the>spot
          third>one thirty>seconds to>finish to>it two>one two>sets whole>way with>that your>breath your>hips
          your>shoulders your>toes
        `,
      ],
      [
        0.25,
        `
          30>seconds a>cushion a>friend a>little a>sip a>skip a>stretch a>table a>while all>right and>breathe
          and>change and>drop and>go and>low and>no and>sit and>slow and>switch and>that's and>up are>fine
          are>tight arms>straight at>you back>foot belly>button both>legs both>sides breathe>out breaths>here
          carry>on chest>height come>back count>it dead>lift doing>it don't>like down>hold down>slow down>two
          each>arm eighteen>nineteen every>day feet>wide first>time five>six five>then foot>flat foot>on foot>up
          for>forty for>two from>it from>there front>squats get>off get>there going>too hands>in hinge>forward
          hip>height hips>back hips>up hold>it how>many i'm>not i>did in>out in>you is>fine is>plenty it>down
          it>hold it>look it>right it>smaller it>two just>the keep>going knee>straight land>soft leave>it
          leg>behind legs>out let>you lifts>off like>this long>arms long>step march>it mean>it minutes>between
          more>seconds no>burpees no>rest no>weights of>all of>six of>these of>twelve of>water of>you off>four
          on>hips one>knee one>leg one>more one>then opposite>leg out>there over>toes push>through quiet>feet
          right>hand roll>out same>again second>time seconds>each seconds>left shake>out sharp>pain side>on
          squat>jumps squeeze>it stand>tall start>with stays>heavy step>in step>up straight>down straight>up
          ten>times that'll>do that's>fine that>three the>air the>anchor the>belly the>cat the>hamstrings the>head
          the>inside the>left the>middle the>nose the>right the>row the>thigh the>wall the>work the>worktop
          then>turn there>is they>do three>four three>minutes three>rounds to>end to>me to>side to>stand to>ten
          to>you too>far too>heavy turn>round twenty>seconds two>goes two>three under>shoulders up>there up>up
          upper>back walk>back want>more was>a way>back way>out we>finish we>were we>won't you're>new you>are
          your>bottom your>ears your>foot your>hip your>midwife your>sides your>time
        `,
      ],
      [
        -0.25,
        `
          3>times 45>seconds a>breath a>hand a>shoulder a>slow a>spot a>wee and>down and>hold and>just and>let
          and>stand and>ten and>the and>then and>you arm>up arms>long arms>out arms>up as>you at>the back>and
          back>bend back>flat back>hip back>to bench>press can>see can>tell child's>pose count>out do>this
          don't>lean down>now down>three each>one end>right feet>on feet>out feet>up for>the for>those forty>five
          four>seconds front>heel go>back go>one good>leg half>way hands>on i>was if>you if>you're in>it in>one
          in>the in>there it's>not it's>there it>go knee>raises lamp>post legs>up let>them like>it like>you
          lower>back make>it next>week ninety>seconds not>a of>that of>the of>your on>one on>the on>your one>minute
          one>side one>up other>arm other>way park>it pelvic>floor press>down pull>up push>ups same>time second>one
          sets>of showing>off side>plank sit>back sort>of stay>there step>away step>off straight>ahead straight>leg
          than>you the>ankles the>back the>bell the>best the>big the>car the>clean the>day the>first the>grass
          the>hands the>shoulder the>side the>window then>press this>morning to>say to>the to>your too>high
          turned>out two>hundred two>thousand up>and up>quick up>you we'll>go we>go we>start with>me you've>done
          you>can't you>feel you>look you>lot you>start your>arms your>backs your>body your>fists your>hamstrings
          your>heel your>middle your>nose your>own your>right your>shins your>shoulder your>tailbone your>thigh
        `,
      ],
      [
        -0.5,
        `
          a>knee a>leg before>you call>it every>exercise five>four four>times it>out keep>it let>it of>five sit>up
          the>bus the>chest the>elbows the>handle the>joint the>leg the>rail the>second the>sheet the>towel
          the>wrists three>seconds toes>down two>minutes you>come your>bum your>knees your>ribs
        `,
      ],
      [-0.75, 'come>down'],
    ],
    gap: [
      [
        0.5,
        `
          again>and back>so back>the find>your four>five in>it in>two knees>as know>the leg>and now>i one>the
          so>the so>you tall>on thighs>and three>and three>four up>all up>up
        `,
      ],
      [
        0.25,
        `
          3>2 8>and a>um back>arms back>knees back>like back>on back>then bend>the bit>if can>go chair>feet come>on
          down>no down>on down>out eight>and feet>if first>two five>six floor>and floor>then foot>if four>and
          go>round goes>and half>and hands>and hips>and in>and in>both in>one is>a is>it it>don't it>from it>hold
          it>into it>just it>so it>take it>your knee>push legs>and legs>if long>and low>and lower>and me>the
          mind>the off>a on>every on>my on>twenty one>and one>down one>if one>rest one>two out>in out>two over>on
          pause>and rest>a seconds>each seconds>four seven>and seven>eight shoulders>and shoulders>on side>elbow
          six>seven spot>on standing>with stop>for swinging>you're ten>no that's>what there>if there>that's
          these>and these>at this>with times>and towel>and two>three up>and up>arms up>back up>if up>two up>your
          ups>and week>and wide>and you>as you>get you>keep
        `,
      ],
      [
        -0.25,
        `
          all>the arm>and as>well at>the back>a back>down back>foot back>heel back>knee back>leg back>up behind>you
          belly>button bench>and big>toes breath>and breathe>out bus>stop chest>and come>and dead>lift don't>let
          down>and down>as down>like elbows>and even>if feet>and feet>flat feet>hip flat>on floor>if forward>and
          four>three front>heel half>a heels>and here>and high>knees hold>it if>you if>you're in>front in>line
          in>the is>the it>a it>for it>like keep>hold last>but legs>the let>go level>with lift>one lunges>and
          metres>and middle>toes minutes>rest nice>and of>the off>you on>back on>it on>the on>your one>foot
          one>hand one>that's out>as out>like over>and ready>and rest>the rings>and round>the round>two
          seconds>left shoulder>that's side>if side>on six>and squat>and squats>hold straight>and straight>arms
          ten>on thank>you the>other there>and thigh>and this>one to>the tucked>back up>as up>down up>or up>the
          up>to wall>sit warm>up way>down you>all you>come you>don't you>use your>knees
        `,
      ],
      [
        -0.5,
        `
          and>then bar>and down>the foot>and forty>five hundred>and like>you're off>the shoulder>blades
        `,
      ],
    ],
  },
  stop: {
    before: [
      [1, 'again instead rounds well'],
      [
        0.75,
        `
          away between change counts crate higher jump left length march more relax rows running sag tidiest today
          twice won't
        `,
      ],
      [
        0.5,
        `
          6 ahead alright anyway arm asking bag bells bored bounce box breathe bridge bucks bug carry cheating
          class close cow curls cushion daughter day done drink drive each enough fine fingers flamingo flying
          follow four free further gate glass go grand ground hair hang happy here hiding hollow it job landing
          lean life line loop marcus middle moment morning move neighbour night ones pauline pigeon pillow please
          pockets problem proud purple quickly racks ready rest rock runners seven shop shout sides sigh skipping
          sofa sorry space spine spring stops strict switch tall taps ten there through tightrope top tss walk
          water went wiggle wobble wobbling
        `,
      ],
      [
        0.25,
        `
          'em 15 24 8 80 alone along ankling another arc august band bank beach beat begin behind belt bit block
          bone both bottom brave breathing bridges brilliant brought bum came carefully carries cat centimetres
          cheat chin christmas cleans clever comfy complain complaints control controlled cooked council count
          counter couple crawl cupboard curb deckchair deep depth diary did difference doddle down dropping early
          ears eight evening everybody exam extra fancy favourite finger flare folded forward fourteen friends frog
          front gone guys hard heads heavy heels help helps hm hmm holds holiday honestly hugs huskies in jaw jeans
          joking kickstand language lap late later laughed leaves leg legs less lifting lifts lives lock looked
          lovely low magic mats menu midline mind minds mo moaning mondays mostly moves moving mum must nearer
          newer noise nose nothing numbers off okay once opening over paying pendulum pickpockets plate play plenty
          plop pocket pools pose postman prize promised pull questions quiet quietly ratio reach relaxed rise rolls
          rude s sand scarf screen session shade shape sheet shin show shrug side sit six skaters slip slower sock
          sods soup spaniel sprints stair stairs stand steep stepping stomping straighten strap strength stretch
          strides string surgery tap team tent these thighs thing tidy time times together tomorrow topple tops
          touches tough tracks treacle trees trip trips tuck tucks twisted twisting underwater up uphill ups us
          version voice waiting wants wave weddings weekend weights welcome wheels why wider width wobbly work
        `,
      ],
      [
        -0.25,
        `
          100 11 2 25 45 7 about across actually an anyone bar bare be because beginners belly bet better bike bird
          blood blow blue bones bow brace break breath bring bugs bus butt by calf call carioca chairs clean coach
          coat coffee comes could course cross crossed cuff deadlifts didn't different do dodgy does doesn't doing
          dollars don't draw drill duck dull ear even every everything except excuse facing feeling fella few fifty
          figure find flexors foot forearms forehead form found gap getting gloves goes green gym had hamstrings
          handed handle has he head's heart heavier her hitting horns hour hurts i i'm i've if imagine incline into
          is it's jab kilo knee knuckles lad land leave letting lie lighter lights locked long loo lowest lying
          main man marged mean mid milk minutes mornings most much muscle my near nearly nineteen nobody nobody's
          noodle not number oh old one's onto open operated option otherwise outside own palms park part past pause
          percent perfectly person pew phone piece pins planks pogo points pressure proper puddle puff push rather
          real really rear reds resting rings rolled rolling sagging saying says seat seated should showing silly
          sixteen skin sleepy smooth some somebody's something sort split squash squats squatting squeeze standing
          steady step stool straight surface sweep tail takes telling that's there's they things think thinks
          thirteen track until wake wall was we'll weeks weigh weight whatever wherever whoever widen wonder worry
          would ye yet you you'll you're you've yourself
        `,
      ],
      [
        -0.5,
        `
          5 a and anybody as at bear bench best burpees but car chap come dumb dumbbell eighty elbows ever exercise
          feel finally for from full get gets got have head hear hip how imaginary keep know lane last let like
          little mailbox make means metres ninety of only or pain pelvic people plates pretend put ring saturday
          second short shoulder single sixty skip so somebody sound squat stacked stage station stay stays straps
          sure than the till tiptoes to tummy uh use very we wee week where whole will with without year your
        `,
      ],
      [-0.75, 'dead er feels forty half kneeling said same see still take what'],
      [-1, 'big just say um'],
    ],
    after: [
      [1.25, 'anybody'],
      [1, "my nothing oh okay sigh somebody's"],
      [
        0.75,
        `
          actually any anyone beginners blow both breathe chest grow hooks how kneel let's maybe no proud reds same
          save second shake smooth somebody squash swap switch thank
        `,
      ],
      [
        0.5,
        `
          almost banana bell big bottom breath calves cardigans chat check deadlifts don't drink elbows empty eyes
          faster feeling fifteen flip follow good hamstrings handle have he heels i i'll i'm ice if imagine inner
          knuckles lengthen lovely main mats most nice nose number only option pain pelvis pickpockets picture
          plank push rate reset rest righto rings rolling rows safety settle shins short sip six skaters slow some
          sorry splits squats squeeze stand steady straps ten then tingling tip try twelve twenty unhurried we'll
          whoever's wring wrist
        `,
      ],
      [
        0.25,
        `
          1 10 18 4 5 8 9 across add aim anyway ask avoid backs backside bands bar bench best blues bouncing bounds
          bow buckles build bum busy bye can't careful carioca cat chairs cheerio chin's choose cobra confident
          controlled crease cross crush cushion dave do drawers drops duck dumbbells eighteen elbow even fill
          finish five forearms from fun gather gloves half halfway halo hands hang hanging hay he'd heal heart
          heavier here's hinge hm hmm how's just keep knees lamp lap last lazy lead leap leave less lifting little
          lively loads long loop lose marching mine mine's mini minute moose muscle nearly never nine nineteen
          nobody nobody's notice numbers onto paddle pedal pick piece pigeon pinch pins plates pop postman progress
          puff racing rack ratio red repeat safeties scoot seated see set seven shaky's she's shift shoes shorten
          shoulders shrugging simply sit skin skip slower small smaller soft soles someone speed spend station
          straighten sure sweep ta there's these third those today's top tuesday tummy twice twisted upper want
          water we what whole whose wrists zip
        `,
      ],
      [
        -0.25,
        `
          11 24 25 26 60 a all an arm away backwards bag band bang barbell bear bells bend between bit board
          breathing breaths button call can catch cheek clean cleans comes curl day dead deep dip doesn't dog door
          draw drop early easy else end every far fine five's fives flat float floor for forehead further gets go
          going grip had haven't heavy held hello hike his hot into it'll its k kick knee know left level lights
          like lives longer lot machine matters metres minutes mornings moves much ninety old once one one's
          opening or pad pair park pigeons pocket position pressure's proper purple put quick reach remember roll
          round rounds russian sand say seconds send she shout show sides sink slide sort sprints squish stays
          steps stick straight swing taller tap teach the there they're thing things this thursday times to toe
          towards tray triceps tuck turn twist um unless up was week weight wet when whenever where why wide widen
          will would written wrong yeah you you'll you're your yourself
        `,
      ],
      [
        -0.5,
        `
          2 40 ahead apart are as at behind bent blades bone bones box but by cold does doing drive eat enough er
          fifty fold forward frame get goes hand hard head height help here high higher hip home hundred instead is
          it jog late leg lift line me mind more morning next not now of ones open seat shin slowly spot stuff than
          that them till today together touch tucked two under ups way were what's which who with yes yet you've
        `,
      ],
      [-0.75, 'again each first foot kiss lets point presses since'],
      [-1, 'because close please'],
    ],
    before2: [
      [1, 'comes need'],
      [0.75, 'each facing feels live slam'],
      [
        0.5,
        `
          1 5 bear begin being belly bounce bus calves change chasing come drift drive effort evening fight
          fingertips gone grip's halve hang higher kitchen last letter lino marching mat milk minute mornings
          nineteen no nobody's okay old own puddle rack raises real romanian settle shoe shoulder sideways since
          soften somebody still telly thank that'll that's ticking too way welcome wet whatever's
        `,
      ],
      [
        0.25,
        `
          25 7 age all almost among another arms baby bank be behind big bins bird bit bones bridges bum carry
          carrying cat catch caught cave chairs chest child's circles clap clock's coat colour complaints copy
          creeping cushion didn't dips doesn't dogs door dumb even eye eyes fabulous fancy farmer's favourite fell
          fingers float for fours frame free goblet good hamstrings help hike hiking hill hitching hollow into its
          join joints joyce kick lamp land lap laughed lean less listen little load lost lovelies lunges main medal
          moment mostly number opposite other over paced palm park past phones pocket pockets pose pounds pretty
          probably proper pulled questions rain ratio really relaxed reps reset resist ribs roll rolling row
          rucksack sag sat scoot shift shopping show sick sigh silly sink socks soft spikes spring stay stays stood
          straighten suitcase suits switch tail taking talk teapot teeth ten thanks their they're thirteen tied
          tight times track trouble tuck twisted underneath waist washing wasn't water wee week's went whisker will
          without wring you're zip
        `,
      ],
      [
        -0.25,
        `
          2 40 90 a always and anything anyway arm as at away band beat because bed bicep blade breathing bring but
          by called calls can't chair clams clean clock collar cool could counting cross deep don't down eight
          empty find fine finish five floor folks forward fourteen getting giving glute go green handle hard he
          height her himself hold hug i i'll i'm if in it'll jacks jerking jog just keep knee's kneecap lane
          lateral let's level lift lifts like lower makes march metres minutes miss months most mouth never next
          oak on only or out pain pause pay plank point priya put quads quick rail read rest rise says school seat
          seated seconds sets shake sheet shoot shoulders six skips slide slow smaller so soles somebody's squeeze
          squeezes start started station step straps swing take tall tattie terrible that then these thighs think
          thirty those thousand through today tomorrow tonight tray upside use view watching weigh weight while who
          wide with won't you've
        `,
      ],
      [
        -0.5,
        `
          3 again an b box breath breathe can ceiling drink elbow end enough er face first foot force front full
          hands has how i'd know leg let lying ninety once pair please pressure pull rounds something sore steps
          tea there's thing till told twelve um until very want warm we'll week what when where whoever's you'll
        `,
      ],
      [-0.75, 'before did give make people sled weeks'],
    ],
    classes: [
      [0.75, 'article>and auxiliary>and opener>verb unit>part verb>kit'],
      [
        0.5,
        `
          article>article article>contraction because>part ing>auxiliary ing>never ing>number ing>verb
          manner>pronoun never>pronoun number>contraction number>opener number>verb opener>opener other>never
          part>article part>number part>pronoun preposition>contraction preposition>unit pronoun>article
          pronoun>number pronoun>part unit>ly unit>other verb>part verb>verb
        `,
      ],
      [
        0.25,
        `
          article>because article>pronoun auxiliary>unit ing>opener ing>part ing>unit kit>contraction kit>ly
          kit>number kit>part ly>other ly>verb manner>contraction manner>kit manner>never manner>number
          manner>opener manner>part manner>verb number>because number>never number>pronoun opener>article
          opener>auxiliary opener>because opener>contraction opener>ing opener>kit opener>number opener>other
          opener>part opener>pronoun other>contraction other>kit other>number other>opener other>part other>verb
          part>kit part>part preposition>kit preposition>never preposition>verb pronoun>pronoun unit>article
          unit>contraction unit>pronoun unit>verb verb>auxiliary verb>never verb>opener verb>unit
        `,
      ],
      [
        -0.25,
        `
          and>article and>auxiliary and>because and>manner and>never and>opener article>auxiliary article>ing
          article>kit article>manner article>number article>other article>preposition auxiliary>article
          auxiliary>ing auxiliary>manner auxiliary>never auxiliary>other auxiliary>preposition auxiliary>verb
          because>article because>auxiliary because>because because>manner because>number because>pronoun
          because>verb contraction>auxiliary contraction>ing contraction>manner contraction>never
          contraction>number contraction>other contraction>preposition contraction>verb ing>article ing>ing
          ing>pronoun kit>auxiliary kit>opener kit>preposition manner>manner manner>preposition never>auxiliary
          never>ing never>opener never>verb number>auxiliary number>unit opener>and other>and other>preposition
          part>and part>ing part>preposition preposition>article preposition>ly preposition>manner
          preposition>number pronoun>auxiliary pronoun>manner pronoun>never pronoun>preposition pronoun>verb
          unit>because unit>unit verb>article verb>because verb>ing verb>ly verb>manner verb>preposition
          verb>pronoun
        `,
      ],
      [
        -0.5,
        `
          and>and and>contraction and>number and>other and>pronoun and>verb article>opener article>part
          article>unit article>verb auxiliary>number auxiliary>pronoun because>contraction because>other
          contraction>opener ing>preposition kit>because never>other other>ly preposition>ing unit>preposition
        `,
      ],
    ],
    opening: [
      [1, 'and>opener'],
      [0.75, 'unit>number'],
      [
        0.5,
        `
          and>because and>preposition article>auxiliary auxiliary>never auxiliary>pronoun because>ing
          contraction>ly contraction>number contraction>unit kit>preposition never>other number>number opener>unit
          part>manner pronoun>auxiliary unit>unit verb>article verb>ing
        `,
      ],
      [
        0.25,
        `
          because>part because>preposition contraction>article contraction>verb ing>part kit>pronoun ly>and
          ly>article never>ly never>verb number>and number>kit opener>number opener>opener opener>other
          part>auxiliary part>unit preposition>manner pronoun>never
        `,
      ],
      [
        -0.25,
        `
          and>ing and>never article>and article>article article>manner article>part article>preposition
          article>pronoun auxiliary>ing auxiliary>number auxiliary>opener auxiliary>other auxiliary>preposition
          because>pronoun contraction>ing contraction>manner contraction>opener contraction>other contraction>part
          ing>and ing>auxiliary ing>because ing>number ing>preposition ing>unit kit>and kit>because kit>contraction
          ly>other ly>preposition ly>verb manner>ing manner>kit manner>other manner>unit never>auxiliary
          never>number never>preposition number>never number>opener opener>because opener>end opener>kit
          opener>pronoun other>because other>contraction other>end other>kit other>never other>opener other>pronoun
          part>because part>kit part>ly part>number part>opener preposition>article preposition>contraction
          preposition>kit preposition>never preposition>number pronoun>and pronoun>because pronoun>opener
          pronoun>part pronoun>verb unit>and unit>contraction unit>manner unit>opener unit>preposition unit>verb
          verb>auxiliary verb>kit verb>opener
        `,
      ],
      [
        -0.5,
        `
          and>auxiliary and>other and>part and>pronoun auxiliary>auxiliary auxiliary>verb because>manner
          because>never because>verb ing>article manner>and manner>contraction manner>never number>auxiliary
          number>other opener>manner opener>preposition other>and other>manner other>verb part>pronoun
          preposition>auxiliary preposition>ing preposition>other preposition>verb pronoun>article pronoun>ing
          pronoun>kit pronoun>number pronoun>preposition unit>because verb>verb
        `,
      ],
    ],
    closing: [
      [1, 'number>opener'],
      [0.75, 'and>opener kit>opener verb>ly'],
      [
        0.5,
        `
          auxiliary>pronoun contraction>pronoun manner>manner manner>part number>number opener>kit opener>manner
          other>ly other>opener preposition>ing preposition>manner preposition>opener preposition>pronoun
          unit>opener unit>unit verb>opener
        `,
      ],
      [
        0.25,
        `
          and>preposition and>unit article>unit article>verb because>never contraction>opener contraction>other
          ing>opener ing>pronoun kit>ly kit>number ly>ing ly>opener ly>preposition ly>verb manner>kit manner>ly
          manner>number manner>opener manner>unit never>other number>manner opener>number opener>other part>ly
          part>manner pronoun>ly pronoun>number pronoun>verb verb>auxiliary verb>manner
        `,
      ],
      [
        -0.25,
        `
          and>and and>auxiliary and>kit and>ly article>and article>auxiliary article>preposition article>pronoun
          auxiliary>because auxiliary>kit auxiliary>ly auxiliary>manner auxiliary>opener because>article
          because>manner because>opener contraction>article contraction>auxiliary contraction>manner
          contraction>unit end>opener ing>and ing>article ing>because ing>contraction kit>and kit>auxiliary
          kit>because kit>part kit>preposition manner>article manner>contraction manner>pronoun never>article
          never>manner never>opener number>article number>because number>contraction number>other
          number>preposition number>pronoun opener>and opener>article opener>because opener>contraction
          opener>preposition other>article other>auxiliary other>contraction other>kit other>part other>verb
          part>auxiliary part>contraction part>never part>part part>pronoun preposition>and preposition>article
          preposition>because preposition>contraction preposition>kit preposition>never preposition>number
          preposition>preposition pronoun>and pronoun>contraction pronoun>kit pronoun>never pronoun>other
          pronoun>part pronoun>pronoun unit>and unit>auxiliary unit>pronoun unit>verb verb>article verb>contraction
          verb>kit verb>unit
        `,
      ],
      [
        -0.5,
        `
          and>article and>contraction and>pronoun article>manner article>opener auxiliary>article because>auxiliary
          because>pronoun ing>verb manner>and manner>auxiliary manner>because number>and number>auxiliary
          opener>pronoun other>and other>because part>and part>because part>number verb>and verb>because
        `,
      ],
    ],
    around: [
      [
        0.75,
        `
          and>other>because article>other>article article>part>article contraction>ing>manner other>opener>other
          part>verb>number verb>number>number
        `,
      ],
      [
        0.5,
        `
          and>number>opener and>opener>number and>verb>contraction article>number>part article>opener>article
          article>other>manner article>other>never article>other>number article>other>pronoun article>part>number
          article>verb>article auxiliary>other>because because>opener>other because>other>verb contraction>ing>and
          contraction>opener>preposition contraction>other>opener contraction>pronoun>preposition ing>other>number
          ing>pronoun>number kit>opener>verb kit>other>part kit>other>verb manner>opener>pronoun
          manner>other>pronoun never>other>opener never>preposition>preposition number>number>article
          number>number>part number>number>preposition number>opener>preposition number>other>verb
          number>part>opener number>preposition>and opener>kit>preposition opener>opener>and opener>other>number
          opener>other>verb other>article>and other>ing>verb other>kit>number other>never>verb other>number>number
          other>number>other other>number>pronoun other>opener>opener other>opener>verb other>other>part
          other>preposition>and other>preposition>auxiliary other>preposition>manner other>pronoun>because
          other>pronoun>contraction other>pronoun>part other>verb>never other>verb>verb part>manner>manner
          part>manner>verb part>preposition>verb preposition>article>article preposition>ing>preposition
          preposition>manner>article preposition>manner>pronoun preposition>number>never preposition>number>verb
          preposition>opener>article preposition>opener>manner preposition>other>auxiliary preposition>other>verb
          preposition>pronoun>opener preposition>pronoun>other preposition>pronoun>verb preposition>verb>kit
          preposition>verb>part pronoun>ing>other pronoun>opener>contraction pronoun>opener>verb pronoun>other>and
          pronoun>other>number pronoun>other>other verb>manner>contraction verb>other>contraction
          verb>other>pronoun verb>preposition>part verb>pronoun>and verb>verb>other
        `,
      ],
      [
        0.25,
        `
          and>manner>preposition and>number>verb and>opener>part and>other>other and>part>preposition
          and>preposition>and and>preposition>number and>preposition>other and>verb>verb article>ing>article
          article>ing>manner article>ing>number article>kit>article article>kit>other article>kit>part
          article>kit>pronoun article>kit>verb article>manner>opener article>number>manner
          article>opener>contraction article>opener>opener article>other>unit article>part>verb
          article>preposition>and article>unit>and article>unit>contraction article>unit>other article>verb>and
          article>verb>contraction article>verb>ing article>verb>opener auxiliary>manner>because
          auxiliary>other>article auxiliary>other>auxiliary auxiliary>other>other auxiliary>pronoun>opener
          auxiliary>pronoun>other auxiliary>pronoun>preposition auxiliary>verb>preposition
          because>other>preposition because>verb>article contraction>ing>contraction contraction>manner>number
          contraction>number>part contraction>opener>and contraction>opener>verb contraction>other>other
          contraction>pronoun>verb ing>and>verb ing>manner>part ing>other>manner ing>other>verb
          ing>preposition>contraction ing>preposition>number kit>article>ing kit>other>because
          kit>other>contraction kit>preposition>never kit>preposition>verb kit>verb>verb ly>preposition>article
          ly>verb>article manner>ing>number manner>manner>contraction manner>manner>part manner>number>and
          manner>number>number manner>opener>article manner>other>because manner>other>ing manner>other>number
          manner>other>part manner>part>number manner>part>preposition manner>preposition>verb manner>verb>number
          manner>verb>pronoun never>auxiliary>article never>other>manner never>verb>other number>ing>other
          number>manner>and number>manner>manner number>manner>preposition number>manner>verb
          number>number>contraction number>number>manner number>number>opener number>number>other
          number>number>verb number>opener>article number>other>because number>part>manner
          number>preposition>manner number>preposition>opener number>unit>article number>unit>contraction
          number>unit>never number>unit>part opener>and>other opener>manner>number opener>manner>other
          opener>number>because opener>number>preposition opener>number>unit opener>part>and opener>part>verb
          opener>unit>number opener>verb>verb other>article>contraction other>ing>other other>ing>part
          other>ing>pronoun other>kit>article other>kit>other other>manner>contraction other>manner>other
          other>manner>pronoun other>number>contraction other>number>kit other>opener>auxiliary other>opener>manner
          other>opener>part other>opener>unit other>other>kit other>other>other other>other>verb other>part>because
          other>part>never other>part>part other>preposition>kit other>unit>article other>unit>contraction
          other>verb>part part>ing>article part>manner>other part>manner>pronoun part>opener>other
          part>other>article part>other>contraction part>other>manner part>other>other part>other>part
          part>other>pronoun part>other>verb part>preposition>number part>verb>opener part>verb>part part>verb>verb
          preposition>article>because preposition>auxiliary>other preposition>ing>other preposition>ing>part
          preposition>manner>other preposition>number>auxiliary preposition>number>manner preposition>opener>number
          preposition>other>contraction preposition>other>never preposition>other>preposition
          preposition>part>auxiliary preposition>preposition>because preposition>preposition>preposition
          preposition>pronoun>article preposition>pronoun>part preposition>unit>other preposition>verb>opener
          pronoun>article>number pronoun>auxiliary>and pronoun>ing>pronoun pronoun>never>preposition
          pronoun>opener>because pronoun>other>opener pronoun>preposition>number pronoun>preposition>opener
          pronoun>preposition>other pronoun>preposition>part pronoun>preposition>pronoun pronoun>unit>verb
          pronoun>verb>and pronoun>verb>pronoun unit>because>pronoun unit>manner>preposition unit>manner>verb
          unit>number>number unit>opener>opener unit>other>and unit>other>article unit>preposition>because
          unit>preposition>unit unit>unit>other verb>article>auxiliary verb>auxiliary>other verb>ing>opener
          verb>manner>and verb>manner>number verb>number>verb verb>opener>article verb>opener>preposition
          verb>opener>verb verb>other>ing verb>other>kit verb>preposition>opener verb>preposition>unit
          verb>pronoun>part
        `,
      ],
      [
        -0.25,
        `
          and>and>verb and>article>other and>article>part and>contraction>other and>number>article
          and>number>manner and>number>preposition and>opener>article and>other>and and>other>auxiliary
          and>other>number and>part>verb and>pronoun>other and>pronoun>verb and>verb>article and>verb>manner
          article>auxiliary>other article>ing>opener article>number>preposition article>number>unit
          article>opener>verb article>other>and article>other>auxiliary article>other>part article>part>auxiliary
          article>part>because article>preposition>other article>unit>because article>unit>preposition
          article>verb>preposition auxiliary>article>opener auxiliary>article>verb auxiliary>ing>other
          auxiliary>manner>verb auxiliary>never>verb auxiliary>other>manner auxiliary>other>part
          auxiliary>other>preposition auxiliary>other>pronoun auxiliary>preposition>auxiliary
          auxiliary>preposition>opener auxiliary>pronoun>ing auxiliary>pronoun>manner auxiliary>verb>number
          because>article>part because>contraction>opener because>contraction>other because>manner>because
          because>pronoun>auxiliary because>pronoun>other contraction>article>other contraction>ing>article
          contraction>manner>pronoun contraction>manner>verb contraction>number>manner contraction>number>other
          contraction>opener>contraction contraction>other>article contraction>other>contraction
          contraction>other>preposition end>opener>opener end>opener>other ing>article>other ing>article>part
          ing>manner>other ing>number>other ing>other>other ing>preposition>article ing>preposition>opener
          ing>pronoun>other kit>and>verb kit>number>other kit>other>article kit>other>other kit>preposition>and
          kit>preposition>article kit>preposition>contraction kit>preposition>part kit>verb>opener
          manner>article>other manner>because>pronoun manner>manner>manner manner>manner>other manner>number>other
          manner>number>preposition manner>opener>verb manner>other>article manner>part>other
          manner>preposition>and manner>preposition>manner manner>preposition>other manner>pronoun>opener
          manner>unit>preposition never>article>other never>ing>contraction never>ing>preposition
          never>opener>because never>other>contraction never>preposition>other number>and>number
          number>article>other number>kit>other number>manner>unit number>number>because number>other>number
          number>other>other number>other>preposition number>part>and number>preposition>article
          number>preposition>pronoun number>unit>manner opener>ing>other opener>opener>contraction
          opener>opener>opener opener>opener>verb opener>other>pronoun opener>part>preposition
          opener>preposition>number opener>preposition>preposition other>and>number other>and>other
          other>and>pronoun other>article>kit other>article>opener other>article>other other>auxiliary>article
          other>auxiliary>pronoun other>because>article other>because>contraction other>because>other
          other>because>pronoun other>contraction>other other>ing>article other>ing>contraction
          other>ing>preposition other>kit>preposition other>kit>verb other>manner>preposition other>never>other
          other>number>and other>number>article other>number>auxiliary other>number>preposition other>number>unit
          other>opener>and other>opener>ing other>opener>never other>opener>preposition other>other>auxiliary
          other>other>number other>other>preposition other>part>contraction other>part>opener
          other>part>preposition other>preposition>article other>preposition>ing other>preposition>other
          other>preposition>preposition other>pronoun>auxiliary other>pronoun>never other>unit>and
          other>unit>opener other>unit>preposition other>verb>manner other>verb>number other>verb>other
          other>verb>pronoun part>and>part part>and>verb part>article>verb part>auxiliary>manner
          part>because>contraction part>ing>manner part>ing>preposition part>ing>pronoun part>manner>preposition
          part>number>other part>opener>article part>opener>verb part>other>opener part>preposition>and
          part>preposition>auxiliary part>unit>article part>verb>contraction part>verb>preposition
          preposition>and>verb preposition>article>contraction preposition>article>kit preposition>article>opener
          preposition>article>other preposition>article>part preposition>article>preposition
          preposition>article>unit preposition>because>contraction preposition>because>pronoun
          preposition>ing>pronoun preposition>number>article preposition>number>other preposition>number>part
          preposition>number>unit preposition>other>and preposition>other>because preposition>other>ing
          preposition>other>other preposition>part>and preposition>part>manner preposition>preposition>article
          preposition>preposition>manner preposition>preposition>number preposition>preposition>opener
          preposition>verb>and preposition>verb>article preposition>verb>because preposition>verb>preposition
          preposition>verb>pronoun pronoun>auxiliary>auxiliary pronoun>auxiliary>ing pronoun>auxiliary>never
          pronoun>auxiliary>other pronoun>auxiliary>verb pronoun>manner>other pronoun>never>verb
          pronoun>number>other pronoun>opener>manner pronoun>opener>opener pronoun>other>because
          pronoun>preposition>manner pronoun>preposition>preposition pronoun>unit>other pronoun>verb>contraction
          pronoun>verb>part unit>article>other unit>number>opener unit>number>preposition unit>other>number
          unit>other>preposition unit>preposition>and unit>preposition>number unit>preposition>other
          unit>preposition>verb unit>pronoun>other unit>unit>preposition verb>and>verb verb>article>kit
          verb>article>number verb>article>other verb>article>part verb>article>verb verb>manner>article
          verb>manner>because verb>manner>preposition verb>number>manner verb>opener>and verb>opener>other
          verb>other>article verb>other>number verb>other>opener verb>other>other verb>preposition>auxiliary
          verb>preposition>because verb>preposition>preposition verb>verb>verb
        `,
      ],
      [
        -0.5,
        `
          and>other>article and>preposition>manner and>verb>preposition article>ing>other article>kit>and
          article>kit>because article>manner>other article>opener>number article>preposition>part
          article>verb>because auxiliary>article>number auxiliary>article>other because>pronoun>verb
          contraction>ing>number contraction>ing>preposition contraction>opener>article contraction>other>pronoun
          ing>other>preposition never>other>other number>manner>other number>number>never number>number>number
          number>preposition>number opener>manner>verb other>and>contraction other>and>verb other>article>part
          other>ing>and other>number>manner other>preposition>never other>verb>article other>verb>contraction
          part>manner>and part>other>never part>other>preposition part>part>verb part>preposition>because
          part>verb>because preposition>manner>and preposition>manner>manner preposition>number>contraction
          preposition>pronoun>because preposition>pronoun>preposition pronoun>opener>and pronoun>other>article
          pronoun>other>part pronoun>other>preposition pronoun>other>pronoun unit>other>contraction
          verb>number>part verb>other>manner verb>other>preposition verb>pronoun>opener
        `,
      ],
      [-0.75, 'article>other>kit because>other>because preposition>ing>article'],
    ],
    across: [
      [
        0.75,
        `
          manner>and>because number>and>verb other>because>other other>opener>number part>other>other
          part>verb>article preposition>and>article unit>other>other
        `,
      ],
      [
        0.5,
        `
          article>number>number auxiliary>other>opener ing>opener>other ing>other>pronoun ing>verb>article
          kit>article>other kit>other>other kit>verb>other manner>and>article manner>number>unit manner>unit>number
          number>because>article number>opener>preposition number>preposition>and number>preposition>preposition
          number>verb>article number>verb>preposition opener>and>opener opener>auxiliary>pronoun
          opener>because>article opener>opener>part opener>other>contraction opener>other>other opener>part>verb
          opener>preposition>preposition opener>preposition>pronoun opener>pronoun>auxiliary opener>verb>and
          other>and>opener other>article>auxiliary other>article>number other>auxiliary>article
          other>auxiliary>pronoun other>ing>other other>ing>part other>kit>preposition other>never>manner
          other>never>other other>number>and other>number>number other>number>part other>opener>article
          other>part>preposition other>preposition>manner other>pronoun>auxiliary other>unit>other other>unit>unit
          part>and>opener part>auxiliary>article part>manner>because part>opener>opener part>opener>verb
          part>pronoun>other preposition>and>contraction preposition>contraction>other preposition>kit>preposition
          preposition>opener>unit preposition>preposition>part preposition>pronoun>auxiliary
          preposition>verb>because pronoun>and>preposition pronoun>article>part pronoun>number>number
          unit>and>other unit>manner>because unit>other>article unit>part>preposition unit>verb>article
          verb>article>ing verb>kit>preposition verb>number>unit verb>opener>other verb>pronoun>auxiliary
          verb>verb>article
        `,
      ],
      [
        0.25,
        `
          and>article>part and>other>number and>part>part and>preposition>because article>and>article
          article>ing>manner article>number>and auxiliary>article>part auxiliary>number>part auxiliary>other>part
          auxiliary>preposition>opener ing>and>article ing>and>opener ing>never>other ing>number>and
          ing>number>number ing>number>part ing>other>article ing>other>preposition ing>verb>other
          ing>verb>preposition ing>verb>verb kit>and>article kit>and>manner kit>and>number kit>article>kit
          kit>manner>other kit>number>number kit>other>because kit>other>number manner>article>verb
          manner>contraction>never manner>contraction>opener manner>ing>article manner>kit>preposition
          manner>manner>article manner>manner>preposition manner>number>number manner>opener>preposition
          manner>opener>verb manner>other>verb manner>part>other manner>part>preposition manner>preposition>manner
          manner>pronoun>verb manner>verb>and manner>verb>because manner>verb>preposition never>preposition>pronoun
          number>and>manner number>article>other number>contraction>article number>manner>manner
          number>manner>preposition number>manner>verb number>never>other number>number>article
          number>number>contraction number>number>opener number>number>other number>number>part number>number>verb
          number>opener>and number>opener>pronoun number>other>article number>other>ing number>part>manner
          number>preposition>because number>unit>pronoun opener>and>preposition opener>article>other
          opener>contraction>verb opener>ing>other opener>ing>preposition opener>kit>preposition
          opener>manner>number opener>manner>part opener>number>other opener>opener>and opener>opener>other
          opener>opener>preposition opener>other>part opener>other>preposition opener>part>preposition
          opener>preposition>verb opener>unit>other opener>verb>other opener>verb>pronoun other>article>unit
          other>article>verb other>auxiliary>never other>because>because other>because>preposition
          other>contraction>article other>contraction>verb other>kit>number other>kit>pronoun other>manner>article
          other>never>verb other>number>other other>opener>contraction other>opener>unit other>other>article
          other>other>because other>other>kit other>other>part other>part>contraction other>part>ing
          other>part>manner other>preposition>because other>preposition>preposition other>pronoun>manner
          other>pronoun>other other>pronoun>unit other>unit>article other>unit>number other>verb>article
          other>verb>contraction other>verb>ing other>verb>manner other>verb>other other>verb>preposition
          other>verb>verb part>and>contraction part>and>number part>and>pronoun part>article>other
          part>article>part part>because>ing part>kit>preposition part>number>preposition part>opener>other
          part>other>number part>part>and part>part>verb part>preposition>contraction part>preposition>pronoun
          part>verb>pronoun preposition>article>auxiliary preposition>because>article preposition>contraction>ing
          preposition>contraction>number preposition>number>article preposition>opener>article
          preposition>opener>verb preposition>other>auxiliary preposition>part>auxiliary preposition>part>manner
          preposition>part>unit preposition>preposition>because preposition>pronoun>manner preposition>unit>article
          preposition>unit>preposition preposition>verb>article preposition>verb>ing preposition>verb>preposition
          pronoun>and>opener pronoun>article>manner pronoun>contraction>article pronoun>manner>opener
          pronoun>number>preposition pronoun>other>unit pronoun>part>other pronoun>pronoun>auxiliary
          pronoun>pronoun>other unit>never>verb unit>opener>article unit>pronoun>auxiliary unit>pronoun>other
          verb>and>preposition verb>article>verb verb>auxiliary>never verb>because>contraction verb>manner>other
          verb>manner>preposition verb>number>article verb>number>number verb>other>part verb>other>pronoun
          verb>part>other verb>preposition>and verb>unit>article verb>verb>number
        `,
      ],
      [
        -0.25,
        `
          and>article>other and>contraction>article and>contraction>other and>number>preposition and>other>article
          and>other>preposition and>pronoun>other and>verb>other and>verb>preposition and>verb>pronoun
          article>auxiliary>article article>kit>other article>kit>verb article>manner>other
          article>manner>preposition article>number>other article>number>preposition article>number>verb
          article>opener>number article>other>and article>other>article article>other>auxiliary
          article>other>because article>other>contraction article>other>ing article>other>kit article>other>manner
          article>other>opener article>other>other article>other>part article>other>preposition
          article>other>pronoun article>other>verb article>part>and article>part>article article>part>auxiliary
          article>part>contraction article>part>ing article>part>manner article>part>number article>part>other
          article>part>part article>part>verb article>preposition>article article>pronoun>other
          auxiliary>article>other auxiliary>article>verb auxiliary>never>verb auxiliary>number>article
          auxiliary>number>number auxiliary>other>other auxiliary>other>pronoun auxiliary>part>other
          auxiliary>preposition>article auxiliary>pronoun>other because>article>auxiliary because>article>other
          because>contraction>article because>contraction>other because>contraction>preposition
          because>manner>because because>other>other because>pronoun>auxiliary because>pronoun>other
          because>verb>article contraction>opener>other contraction>other>other contraction>other>preposition
          ing>and>verb ing>contraction>other ing>manner>article ing>manner>other ing>other>other
          ing>preposition>article ing>preposition>verb ing>verb>number kit>and>other kit>article>part
          kit>contraction>other kit>number>other kit>number>unit kit>opener>preposition kit>other>and
          kit>other>manner kit>other>part kit>other>verb kit>preposition>other kit>verb>opener kit>verb>preposition
          manner>and>manner manner>because>pronoun manner>because>verb manner>contraction>manner
          manner>manner>number manner>number>other manner>opener>other manner>other>because manner>other>opener
          manner>preposition>article manner>preposition>other manner>unit>preposition never>other>article
          never>verb>other never>verb>preposition number>and>number number>and>opener number>article>part
          number>because>contraction number>kit>verb number>manner>unit number>number>never number>other>because
          number>other>number number>other>verb number>part>number number>pronoun>verb number>unit>and
          number>unit>article number>unit>preposition number>unit>verb opener>and>article opener>and>manner
          opener>article>auxiliary opener>manner>because opener>number>part opener>opener>article opener>other>and
          opener>other>kit opener>other>manner opener>other>never opener>part>and opener>part>unit
          opener>preposition>article opener>preposition>because opener>preposition>number opener>pronoun>verb
          opener>verb>article other>and>number other>and>pronoun other>article>ing other>article>kit
          other>article>preposition other>auxiliary>auxiliary other>auxiliary>verb other>because>pronoun
          other>contraction>other other>kit>because other>manner>never other>never>opener other>never>preposition
          other>number>article other>number>because other>number>opener other>number>preposition other>number>verb
          other>opener>kit other>opener>preposition other>opener>pronoun other>other>and other>other>contraction
          other>part>and other>part>article other>part>pronoun other>part>verb other>preposition>article
          other>preposition>contraction other>pronoun>article other>unit>and other>unit>because part>and>article
          part>and>never part>and>preposition part>and>verb part>auxiliary>never part>because>article
          part>contraction>ing part>contraction>other part>ing>article part>manner>part part>never>other
          part>other>because part>other>ing part>other>never part>other>opener part>preposition>and
          part>preposition>article part>preposition>verb part>unit>preposition part>verb>because
          preposition>and>preposition preposition>article>kit preposition>article>other preposition>article>part
          preposition>article>preposition preposition>article>unit preposition>because>other
          preposition>because>pronoun preposition>contraction>never preposition>ing>article
          preposition>manner>never preposition>number>and preposition>number>contraction preposition>number>other
          preposition>number>part preposition>opener>manner preposition>other>number preposition>part>other
          preposition>preposition>article preposition>preposition>number preposition>pronoun>verb
          preposition>unit>other preposition>verb>kit preposition>verb>opener preposition>verb>verb
          pronoun>and>verb pronoun>article>other pronoun>auxiliary>article pronoun>auxiliary>other
          pronoun>contraction>never pronoun>contraction>other pronoun>manner>preposition pronoun>number>unit
          pronoun>opener>because pronoun>other>article pronoun>other>contraction pronoun>other>verb
          pronoun>preposition>manner pronoun>preposition>other pronoun>verb>and pronoun>verb>contraction
          pronoun>verb>preposition pronoun>verb>verb unit>other>number unit>other>unit unit>other>verb
          unit>preposition>article unit>preposition>preposition unit>verb>other verb>article>auxiliary
          verb>article>kit verb>article>other verb>article>part verb>because>pronoun verb>contraction>auxiliary
          verb>manner>verb verb>number>other verb>opener>contraction verb>other>number verb>part>because
          verb>part>verb verb>preposition>other verb>preposition>part verb>preposition>preposition
          verb>preposition>verb verb>pronoun>preposition verb>verb>and verb>verb>other
        `,
      ],
      [
        -0.5,
        `
          and>pronoun>auxiliary and>verb>article article>and>other article>kit>preposition article>part>preposition
          article>verb>other auxiliary>verb>other ing>and>contraction ing>other>verb kit>and>verb
          kit>because>article number>and>article number>and>pronoun number>number>number number>other>and
          number>other>unit number>preposition>article number>preposition>pronoun number>verb>and
          opener>opener>opener opener>opener>verb other>and>article other>and>other other>auxiliary>preposition
          other>number>auxiliary other>other>verb other>preposition>ing other>preposition>number
          other>preposition>other other>preposition>verb other>pronoun>preposition part>and>part
          part>because>contraction part>manner>and part>manner>preposition part>opener>article part>other>verb
          part>verb>auxiliary part>verb>contraction part>verb>verb preposition>contraction>auxiliary
          preposition>manner>part preposition>number>number preposition>opener>and preposition>other>and
          preposition>other>preposition preposition>other>pronoun pronoun>other>pronoun unit>and>verb
          verb>because>other verb>contraction>number verb>manner>article verb>preposition>pronoun
        `,
      ],
      [-0.75, 'part>opener>preposition'],
    ],
    'kind-before2': [
      [
        -0.25,
        `
          adverb amount and but day do have kit never or particle person pointer s then unit verb
        `,
      ],
      [-0.5, 'because end modal'],
    ],
    'kind-after': [
      [0.5, 'praise then'],
      [0.25, 'hello owned'],
      [
        -0.25,
        `
          adverb amount compared er ing modal noun or particle person pointer preposition to unit want
        `,
      ],
      [-0.5, 'be but day did does ed object of'],
    ],
    'kind-after2': [
      [0.5, 'owned'],
      [0.25, 'does modal person'],
      [
        -0.25,
        `
          adjective adverb and because contraction er ing kit never number or other part pointer praise subject
          unit verb
        `,
      ],
      [-0.5, 'day end hello then'],
    ],
    kinds: [
      [
        0.75,
        `
          adjective>article adjective>number amount>order because>verb does>part kit>part noun>adjective
          noun>praise number>adjective number>verb object>subject other>adjective particle>do particle>number
          particle>part particle>pointer preposition>verb s>adjective s>part unit>verb
        `,
      ],
      [
        0.5,
        `
          adjective>contraction adjective>ing adjective>other adjective>owner adverb>kit adverb>owner amount>hello
          amount>then article>because be>noun be>verb compared>and does>verb ed>pointer er>number hello>amount
          hello>number ing>adjective ing>adverb ing>hello ing>number ing>verb kit>adjective kit>contraction kit>kit
          kit>number kit>other modal>number never>number never>subject noun>ing noun>kit noun>other noun>part
          noun>verb number>adverb number>contraction number>never number>part number>then order>adjective
          other>hello other>never other>number part>kit part>number part>other part>owner part>part part>person
          part>praise part>subject part>then particle>ed particle>kit particle>never particle>noun particle>other
          particle>person particle>praise particle>s particle>verb person>part person>verb pointer>number
          praise>because praise>subject s>kit s>other s>owner s>subject subject>kit subject>number subject>owned
          subject>owner subject>praise then>part unit>noun unit>part unit>praise verb>contraction verb>hello
          verb>ing verb>kit verb>order verb>owned verb>part verb>verb
        `,
      ],
      [
        0.25,
        `
          adjective>compared adjective>do adjective>never adjective>order adjective>praise adjective>subject
          adjective>verb adverb>adverb adverb>contraction adverb>noun adverb>particle adverb>s amount>article
          amount>ing amount>noun amount>particle amount>s article>and be>particle because>noun compared>contraction
          compared>number compared>other do>hello do>kit do>other does>pointer ed>adjective ed>because ed>hello
          ed>noun ed>verb er>adjective er>adverb er>and er>article er>verb hello>adjective hello>contraction
          hello>noun hello>order hello>s ing>contraction ing>have ing>other ing>part ing>subject kit>article
          kit>subject kit>unit kit>verb never>particle noun>noun noun>person noun>s number>article number>have
          number>other object>article object>hello object>other order>particle other>and other>contraction other>do
          other>owned other>verb part>amount part>contraction part>hello part>owned part>want particle>adjective
          particle>amount particle>contraction particle>owned particle>then person>be pointer>adverb pointer>and
          pointer>article pointer>contraction pointer>hello pointer>order pointer>verb praise>order
          praise>preposition praise>verb preposition>does preposition>never preposition>noun
          preposition>preposition preposition>then preposition>want s>contraction s>do s>number subject>adjective
          subject>because subject>other subject>subject then>kit then>preposition to>because unit>article
          unit>hello unit>kit verb>have verb>other verb>then want>adjective want>noun want>verb
        `,
      ],
      [
        -0.25,
        `
          adjective>noun adjective>of adjective>owned adjective>person adverb>do adverb>number adverb>preposition
          amount>be amount>contraction amount>of amount>other amount>owner amount>verb and>adjective and>article
          and>hello and>kit and>never and>noun and>number and>other and>part and>particle and>subject
          article>adjective article>article article>er article>ing article>kit article>noun article>other
          article>owned article>part article>person article>preposition article>unit article>verb be>adjective
          be>article be>do be>ed be>ing be>praise because>amount because>article because>be because>number
          because>owner because>pointer compared>kit compared>particle contraction>adjective contraction>adverb
          contraction>article contraction>because contraction>did contraction>do contraction>have contraction>ing
          contraction>never contraction>number contraction>other contraction>praise contraction>subject day>hello
          day>preposition did>owner did>particle did>preposition do>contraction do>pointer does>be does>contraction
          does>particle does>preposition ed>article ed>other ed>owner ed>preposition er>other er>part est>noun
          have>did hello>hello hello>part hello>preposition hello>then ing>noun kit>and kit>be kit>because kit>does
          kit>modal kit>noun kit>or kit>particle kit>pointer kit>preposition modal>do never>adjective never>and
          never>ing never>noun never>other never>preposition never>verb noun>and noun>be noun>object noun>of
          noun>then number>be number>kit number>noun number>of number>praise number>s number>to object>adverb
          object>particle of>article of>other of>pointer of>subject or>verb order>kit order>other order>owned
          other>er other>have other>ing other>object other>particle other>pointer other>to owned>adverb owned>ing
          owned>never owned>number owned>other owned>part owner>adjective owner>kit owner>noun owner>number
          owner>order owner>other owner>owned owner>part owner>s part>be part>ed part>order part>particle
          part>preposition particle>adverb particle>and particle>hello particle>of particle>preposition particle>to
          particle>unit person>and person>order pointer>adjective praise>hello praise>other preposition>article
          preposition>ing preposition>kit preposition>object preposition>owned preposition>owner
          preposition>subject preposition>to s>be s>because s>hello s>order subject>be subject>did subject>do
          subject>does subject>have subject>ing subject>modal subject>never subject>unit subject>verb subject>want
          then>noun then>number then>verb to>do to>hello to>number to>other unit>because unit>of unit>or
          unit>pointer unit>preposition unit>subject verb>and verb>article verb>object verb>of verb>owner
          verb>particle verb>preposition verb>subject verb>to want>subject want>to
        `,
      ],
      [
        -0.5,
        `
          adjective>amount adjective>kit adjective>part adjective>s adverb>amount amount>owned amount>preposition
          and>contraction and>then and>verb article>hello article>number article>order article>praise
          article>subject be>number be>other because>adjective because>contraction because>hello because>subject
          compared>because day>contraction did>number do>because do>number does>adverb does>article does>praise
          ed>adverb hello>never ing>particle ing>preposition noun>adverb noun>order number>does number>unit
          of>number order>number order>subject order>unit other>does owned>adjective owned>verb part>and part>does
          part>ing part>noun pointer>kit praise>noun praise>person preposition>number preposition>pointer s>adverb
          s>preposition unit>particle
        `,
      ],
      [-0.75, 'contraction>verb modal>verb person>number to>verb'],
    ],
    'kind-opening': [
      [1, 'and>kit because>pointer'],
      [
        0.75,
        `
          adverb>noun amount>ed and>order be>pointer hello>because hello>subject other>article owned>because
          owner>person pointer>be pointer>owned subject>ed
        `,
      ],
      [
        0.5,
        `
          adjective>adjective adjective>part adjective>particle adverb>article adverb>subject and>amount
          and>because and>particle be>contraction because>amount because>be contraction>number contraction>object
          do>never do>object have>article have>subject hello>article kit>does never>adjective never>verb noun>s
          noun>subject number>adjective number>amount number>particle number>to or>adverb or>verb order>number
          order>particle order>subject other>pointer other>unit owned>did owner>owned part>adjective part>ed
          person>verb praise>and praise>noun subject>modal subject>unit subject>want then>adverb then>noun
          then>subject verb>article verb>compared verb>of verb>owner want>amount
        `,
      ],
      [
        0.25,
        `
          adjective>compared adjective>hello adjective>ing adjective>kit adjective>noun adjective>object
          adjective>owned adjective>pointer adjective>s adverb>of adverb>part article>er article>ing article>number
          article>of article>owned be>subject because>did because>do because>number because>preposition
          compared>noun compared>part contraction>adverb contraction>article contraction>do contraction>hello
          contraction>noun contraction>subject do>hello does>adverb ed>contraction er>because er>preposition
          est>unit hello>hello hello>other hello>then hello>verb ing>part kit>particle kit>preposition kit>subject
          never>noun noun>amount noun>article noun>does noun>object noun>owner noun>then number>and number>does
          number>number number>of number>or order>amount order>of order>pointer order>preposition other>compared
          other>have other>modal other>order other>other other>owner other>to owned>ing owned>never owned>number
          owned>preposition owner>er owner>est part>adverb part>article part>be part>owned part>preposition
          part>then particle>hello particle>order particle>person particle>to person>noun pointer>kit
          praise>contraction praise>order praise>praise praise>preposition praise>subject praise>verb
          preposition>to s>because s>kit s>never s>verb subject>be subject>have subject>kit then>article
          then>contraction then>other then>owner to>noun unit>noun verb>adjective verb>adverb verb>hello verb>ing
          verb>object
        `,
      ],
      [
        -0.25,
        `
          adjective>because adjective>contraction adjective>do adjective>ed adjective>never adjective>order
          adjective>other adjective>subject adjective>then adjective>to adverb>be adverb>because adverb>did
          adverb>ing adverb>owner adverb>praise amount>and amount>never amount>number amount>part amount>verb
          and>adverb and>does and>preposition article>adjective article>amount article>because article>compared
          article>day article>kit be>adverb be>amount be>ing be>owner be>preposition because>adverb because>kit
          because>owned because>subject compared>contraction compared>preposition contraction>adjective
          contraction>be contraction>compared contraction>particle did>object did>preposition do>article
          do>particle do>preposition does>number does>particle does>subject ed>part ed>subject ed>verb hello>ed
          hello>end hello>number hello>particle hello>preposition ing>adverb ing>and ing>because ing>number
          kit>adverb kit>and kit>pointer kit>s kit>verb modal>be modal>do modal>verb never>hello never>subject
          never>want noun>adverb noun>because noun>hello noun>kit noun>number noun>person number>day number>kit
          number>order number>pointer number>preposition object>other object>particle of>article of>number
          of>object of>owner of>pointer of>subject or>article or>because or>owner order>adjective order>contraction
          order>unit other>and other>because other>hello other>object other>part other>preposition owned>adverb
          owned>part owner>other owner>part owner>unit owner>verb part>and part>because part>do part>number
          particle>be particle>contraction particle>kit particle>never particle>of particle>owned particle>owner
          particle>particle particle>then person>article person>contraction pointer>hello pointer>noun pointer>part
          pointer>subject pointer>verb praise>person preposition>adjective preposition>and preposition>article
          preposition>contraction preposition>ing preposition>kit preposition>noun preposition>other
          preposition>part preposition>particle preposition>s s>noun subject>and subject>compared subject>hello
          subject>other subject>owner subject>pointer subject>preposition subject>subject subject>to then>number
          then>s to>article to>number to>owner to>part to>subject unit>adjective unit>adverb unit>and unit>because
          unit>contraction unit>other unit>preposition verb>because verb>do verb>noun verb>pointer verb>s verb>then
          want>article
        `,
      ],
      [
        -0.5,
        `
          adjective>verb adverb>and adverb>hello adverb>particle and>ed and>ing and>subject article>preposition
          article>unit be>article be>number because>article because>hello because>never contraction>ed does>article
          ed>particle ed>preposition have>did hello>be ing>particle kit>because kit>contraction noun>be
          noun>contraction noun>never noun>of noun>part number>adverb number>be number>other number>part
          number>subject object>preposition order>part order>to other>adverb other>contraction other>do other>verb
          owner>kit owner>s part>hello part>noun part>subject particle>article particle>noun particle>other
          particle>verb pointer>unit preposition>object preposition>pointer preposition>subject preposition>verb
          s>subject subject>adjective subject>amount subject>because subject>contraction subject>particle then>part
          unit>verb verb>kit verb>number verb>verb
        `,
      ],
      [-0.75, 'because>verb noun>adjective'],
      [-1, 'and>adjective'],
    ],
    names: [
      [0.75, 'no>first'],
      [0.5, 'inside>no'],
      [-0.25, 'no>no'],
      [-1, 'first>inside inside>inside'],
    ],
    since: [
      [0.5, '10 12'],
      [0.25, '11'],
      [-0.25, '2'],
      [-0.5, '1'],
    ],
    'since-class': [
      [0.75, '6>opener'],
      [0.5, '5>never 5>number 7>number 7>opener 7>verb'],
      [
        0.25,
        `
          2>verb 5>auxiliary 5>opener 6>unit 6>verb 7>contraction 7>never 7>part 7>pronoun
        `,
      ],
      [
        -0.25,
        `
          1>auxiliary 1>because 1>contraction 1>ly 1>number 1>preposition 1>verb 2>article 2>ing 2>ly 2>number
          2>other 2>preposition 2>unit 3>and 3>auxiliary 3>manner 3>preposition 4>because 4>manner 4>preposition
          4>unit 5>preposition 6>and 6>auxiliary 6>because
        `,
      ],
      [
        -0.5,
        `
          1>article 1>ing 1>manner 1>never 1>opener 1>other 1>pronoun 1>unit 2>auxiliary 2>opener 3>ing
        `,
      ],
      [-0.75, '1>part'],
    ],
    'first-word': [
      [1, 'where'],
      [0.75, "add evening racks shake sorry that'll"],
      [
        0.5,
        `
          anyway bird blow calves carry change chest didn't done everybody exhale fast fifteen four good he's heel
          hello honestly how it'll lead marcus move nearly no nobody nobody's opposite out over ribs rows settle
          sigh slowly spread swap telly they time tss twice water welcome whose yeah
        `,
      ],
      [
        0.25,
        `
          1 20 26 45 aim almost ankling arabesque away bench breathe bum bums cat clock's cool dead doorway double
          drink each except eyes facing farmer's five's focus funny get ghost go got grow hamstrings hand haven't
          heal hip hm hmm how's jean joyce lap long longer lower's lunges maureen maybe mo never nine not notice
          odds off onto order pedal phones pickpockets pike presses pretty proud quick quit rack ratio relax
          relaxed right romanian row screw seven shaking's shift soft stay straighten strip strong suitcase
          sunshine switch tall ten thanks that that's they're thighs three thumbs tidy tight till tilt tops towards
          towel twisted umbrella unless watch well whatever while who who's wring years
        `,
      ],
      [
        -0.25,
        `
          30 4 actually adding against an anything baby ball because beginners bend bicep big bit blues body box
          brace breath bye chair come curl dizzy do door drive eighty face feet first flatten for forearms
          forehead's forward full gloves glute going grab hands hang hard he heavier heels hike hold hop i'm inhale
          instead it's jacks just knees l last later lean leg legs less let lie loop loose lose make marged's
          military namaste okay once or pain partner people press pull push rear receiver reds reverse ride road
          round run running safety scoot see she she's simply sixes sixteen skin slide slip slower soak soles
          somebody someone split standing station step stood sure surface ten's the there thigh thirteen those
          tighten today today's toe toes tonight twas unlock walk warm we we'll we've which wide worth you you'll
          your
        `,
      ],
      [
        -0.5,
        `
          a after ankle anybody anyone at b back bell bottom build chalk did draw float front give great half he'd
          i i'll i've ice if imagine kneecap left look lower moose most my nose number on only peel pick prop rate
          reach set shove shut some squash straps swing there's this tip to top we're when whoever's with wrap
          you'd you've
        `,
      ],
      [-0.75, "from next somebody's stand we'd"],
      [-1, 'now'],
    ],
    'since-kind': [
      [
        0.5,
        `
          3>owned 3>praise 4>do 4>hello 4>number 4>then 5>adjective 6>adjective 6>er 6>never 7>adjective
          7>contraction 7>hello 7>or 7>order 7>s 7>then 7>verb
        `,
      ],
      [
        0.25,
        `
          1>and 1>day 2>contraction 2>er 2>praise 3>compared 3>never 3>order 3>person 3>want 4>part 5>contraction
          5>have 5>number 5>owner 5>part 5>praise 5>then 5>verb 6>contraction 6>est 6>have 6>kit 6>number 6>owned
          6>praise 7>article 7>because 7>do 7>ing 7>number 7>owned 7>part 7>particle 7>pointer 7>subject
        `,
      ],
      [
        -0.25,
        `
          1>contraction 1>do 1>does 1>er 1>modal 1>number 1>object 1>of 1>owned 1>owner 1>preposition 1>s 1>then
          1>to 1>verb 1>want 2>adverb 2>article 2>because 2>did 2>ed 2>have 2>ing 2>of 2>order 2>owner 2>particle
          2>preposition 2>subject 2>want 3>and 3>be 3>did 3>er 3>modal 3>noun 3>object 3>of 3>other 3>owner
          4>adverb 4>and 4>have 4>ing 4>object 4>of 4>to 5>did 5>does 5>er 5>modal 5>object 5>of 5>pointer 5>s
          6>and 6>does 6>ing 6>of 6>or 7>be 7>er 7>have
        `,
      ],
      [
        -0.5,
        `
          1>adjective 1>adverb 1>amount 1>article 1>be 1>compared 1>ed 1>hello 1>ing 1>kit 1>never 1>noun 1>order
          1>other 1>part 1>particle 1>person 1>pointer 1>subject 1>unit 2>be 2>day 2>object 2>or 2>pointer 2>s 2>to
          2>unit 3>amount 3>ing 3>particle 4>be 4>does 4>noun 4>preposition 5>preposition 5>unit 6>adverb 6>do
          7>does 7>object 7>of 7>to
        `,
      ],
    ],
    'kind-since': [
      [
        0.5,
        `
          adjective>3 adverb>2 adverb>6 do>5 er>3 ing>6 kit>7 never>5 never>6 never>7 number>1 other>7 part>4
          part>6 pointer>7 praise>1 praise>4 unit>2 unit>7
        `,
      ],
      [
        0.25,
        `
          adjective>2 adjective>4 adjective>5 adjective>7 adverb>5 amount>2 and>2 article>7 be>4 be>7 but>6
          compared>4 compared>5 did>2 do>6 do>7 does>2 have>4 hello>4 ing>3 ing>4 order>7 other>2 other>6 owned>2
          owned>6 part>5 part>7 particle>3 particle>4 particle>5 particle>7 person>7 s>6 then>5 then>6 verb>7
          want>7
        `,
      ],
      [
        -0.25,
        `
          and>1 and>3 article>1 because>1 because>2 because>4 because>5 but>5 contraction>2 contraction>3 day>1
          does>3 never>2 noun>1 number>2 number>6 number>7 or>1 or>2 order>4 owned>3 owned>4 owned>5 owner>1
          owner>4 particle>2 particle>6 person>1 person>4 pointer>1 pointer>4 pointer>6 praise>5 praise>6
          preposition>2 preposition>4 s>2 subject>1 subject>3 subject>4 subject>5 then>1 then>4 to>4 unit>1 unit>4
          verb>1 verb>2 want>1 want>6
        `,
      ],
      [
        -0.5,
        `
          and>5 article>2 be>2 because>3 because>6 contraction>1 do>3 er>1 hello>1 ing>1 kit>1 kit>4 never>1 noun>4
          or>3 owned>1 owner>3 owner>6 part>1 pointer>2 preposition>1 subject>2
        `,
      ],
      [-0.75, 'adjective>1 adverb>1 amount>1 amount>4 order>1 other>1 owner>2'],
      [-1, 'compared>1'],
    ],
    after2: [
      [1, "against that'll"],
      [0.75, 'asked eat lot lunges red seven stays switch through'],
      [
        0.5,
        `
          19 85 again anybody anything are as breath clicked comes doing dull easy eighty else everybody's finding
          fluff folks forwards goes hot kicks know letting long looks marged minute neck one's onto park plan proud
          questions quick record rules rush sharp shoes shouldn't six slides stations stretch sure swinging takes
          third thrusts took turning us used was we we've were wherever written yourself
        `,
      ],
      [
        0.25,
        `
          100 60 a1 about across always arch bales bar's bars begin bench bending bent best bird blades boiler
          breaths brush burpees bus button calf cardigan careful chalk change cheer clams comfy cooked cooler crawl
          cross crossed crush dead didn't dog done drift drifting drinks ear external face facing faster fella
          fifth flamingo flatten flop foot foot's force forced gentle grandad grip gripping hand hang heard heart
          heel hill hip's home hops how hug jerking jug kilo knee kneeling lighter literally lock looked looking
          loosen lovely lying makes many march met might more moves normally number offs on option over pad pain
          painting pair pedal phone physio pigeon plank planned please plonking point position post power priya
          prize progress ra rained ratio relax repetitions reset roll round rounds rowed rows say scale seconds
          seeing set shake should showing shrugging sister skip slowly spine spread sprints stay steps stick
          strokes strong summer supposed swings tables tailbone taken tall taller tap teacher thing things those
          tip trouble turned turns two two's uh voice wee where which wings wrote yank
        `,
      ],
      [
        -0.25,
        `
          20 22 30 34 above and ankle answer anyone ask asking awake baby back backs be beat belly bit blow blues
          board bone bother bottom broke buckles call came cheat cheating check child's chin cleans control count
          counting counts cushion degrees do doesn't don't downs draw drop ease eight eighteen end even faces feels
          finished fists flat floor forearms forget form front getting give going gone grab ground half hands happy
          he he's height help her higher hips hold i'll in inside instead it's jacks jump just keep kids kilos land
          last later leaves legged length let letter lie light like loads make metres mine's moaning much my near
          necks nice night nine nose not nothing o'clock open or other past people plenty pointing pressure promise
          raise rather real really ring rolling run rushing saving says seen shame single slide sorry sort split
          squeezes stands stood stop take ten thank this thought thousand thumbs thursday till times today told top
          towards towel tuck tuesday twenty twice twists upright use waiting way we'll welcome while whole width
          with without wobble word yet you
        `,
      ],
      [
        -0.5,
        `
          8 because behind between both breathe by chair come couldn't day elbows every eyes hard head heels holds
          i i'm i've if its leave look minutes month morning ninety no nobody's okay ones pounds punch ready see
          she side sides so some somebody somebody's squeeze stand tell than then there these they're thirty toes
          tonight too turn twelve ups watch week well year you'll
        `,
      ],
      [-0.75, "been before isn't nobody same they"],
    ],
    'kind-ahead': [
      [1.25, 'particle>subject>verb'],
      [
        1,
        `
          and>contraction>article article>other>be because>contraction>article preposition>owner>order
          preposition>owner>particle
        `,
      ],
      [
        0.75,
        `
          adjective>and>other adverb>verb>because and>article>order and>contraction>owner and>verb>because
          contraction>did>article never>noun>owner never>verb>owner number>and>verb number>number>and
          order>unit>subject other>article>contraction other>does>number other>subject>particle owner>part>be
          part>adjective>preposition part>and>part part>be>ing particle>adjective>particle particle>because>subject
          particle>part>does particle>particle>particle particle>preposition>number subject>noun>preposition
          subject>verb>number verb>article>kit verb>subject>part
        `,
      ],
      [
        0.5,
        `
          adjective>and>adjective adjective>of>article adjective>part>because adjective>part>do adjective>part>does
          adjective>preposition>to adjective>subject>verb adverb>adjective>verb adverb>article>ing
          adverb>subject>verb and>article>unit and>because>contraction and>never>verb and>noun>particle
          and>noun>verb and>number>contraction and>number>kit and>other>subject and>verb>contraction
          article>adjective>kit article>adjective>owned article>amount>of article>ing>owner article>kit>amount
          article>kit>does article>of>subject article>owned>article article>part>modal article>part>unit
          article>unit>particle article>verb>article because>be>subject because>because>subject
          because>contraction>did because>contraction>subject because>number>unit because>pointer>be
          because>subject>verb contraction>article>praise contraction>do>number contraction>have>number
          contraction>ing>particle contraction>never>preposition contraction>number>number
          contraction>other>article contraction>preposition>number contraction>verb>article contraction>verb>number
          contraction>want>pointer did>article>adjective do>never>verb have>article>kit hello>article>noun
          hello>because>owner hello>subject>day kit>does>preposition kit>owner>part kit>particle>verb
          kit>preposition>article never>other>owner never>verb>particle noun>article>kit noun>article>particle
          noun>subject>preposition number>and>number number>number>number number>number>particle number>to>verb
          number>unit>article number>unit>of other>article>adjective other>article>part other>particle>of
          other>preposition>preposition other>subject>adverb owned>ing>particle owner>part>does owner>person>modal
          part>adjective>part part>adverb>preposition part>ed>preposition part>ing>preposition part>noun>particle
          part>part>noun part>particle>never part>particle>subject part>preposition>adjective part>preposition>kit
          part>preposition>part part>to>article part>verb>particle particle>adverb>because particle>and>article
          particle>number>number particle>order>subject particle>preposition>subject preposition>because>subject
          preposition>owner>adjective preposition>preposition>article preposition>preposition>number s>never>verb
          subject>and>particle subject>be>article subject>be>ing subject>did>preposition subject>do>article
          subject>have>article subject>never>other subject>unit>particle subject>verb>particle subject>verb>subject
          subject>want>to then>contraction>article to>other>verb unit>particle>preposition verb>because>adjective
          verb>part>because verb>particle>preposition verb>preposition>to verb>subject>preposition verb>to>verb
        `,
      ],
      [
        0.25,
        `
          adjective>adjective>unit adjective>contraction>never adjective>does>preposition adjective>kit>contraction
          adjective>noun>because adjective>noun>of adjective>noun>part adjective>owned>article
          adjective>part>contraction adjective>part>part adjective>part>preposition adjective>part>s
          adjective>part>verb adjective>particle>article adjective>preposition>contraction
          adjective>subject>preposition adjective>unit>particle adjective>unit>preposition adjective>verb>to
          adverb>adjective>adjective adverb>adjective>article adverb>article>adjective adverb>article>subject
          adverb>article>unit adverb>because>article adverb>because>owner adverb>other>article adverb>part>noun
          adverb>verb>owner amount>of>ing and>adjective>subject and>article>adjective and>article>ing
          and>contraction>do and>contraction>number and>have>article and>other>part and>particle>and
          and>particle>contraction and>particle>s and>particle>subject and>particle>to and>particle>verb
          and>then>article and>verb>owner article>adjective>adjective article>ing>contraction article>ing>particle
          article>ing>preposition article>kit>noun article>noun>adjective article>noun>be article>noun>order
          article>noun>preposition article>number>article article>number>verb article>order>owned
          article>other>adverb article>other>does article>other>or article>owned>adverb article>part>does
          article>part>have article>part>noun article>particle>other article>s>adverb article>unit>adjective
          article>unit>hello article>verb>particle be>subject>adjective be>subject>article
          because>adjective>because because>article>part because>contraction>owner because>owner>adjective
          because>owner>particle because>subject>be compared>noun>preposition contraction>adjective>never
          contraction>adjective>preposition contraction>adverb>number contraction>amount>preposition
          contraction>article>adjective contraction>article>adverb contraction>article>unit contraction>did>owner
          contraction>do>pointer contraction>ing>because contraction>never>do contraction>noun>preposition
          contraction>number>unit contraction>owner>other contraction>particle>preposition
          contraction>subject>subject contraction>verb>subject did>subject>article do>number>article do>owner>noun
          do>subject>hello do>subject>number does>part>adjective does>verb>particle have>article>praise
          have>article>verb hello>article>adjective hello>article>kit hello>because>subject
          hello>contraction>adjective hello>contraction>article hello>particle>preposition hello>subject>article
          hello>subject>hello hello>verb>subject ing>adjective>verb ing>particle>verb ing>preposition>preposition
          ing>preposition>to ing>subject>particle kit>article>kit kit>be>preposition kit>does>article
          kit>or>article kit>particle>kit kit>particle>never kit>particle>noun kit>particle>subject
          kit>preposition>adjective kit>preposition>part kit>preposition>pointer kit>subject>part
          modal>verb>particle never>adjective>preposition never>be>ing never>ing>article never>ing>preposition
          never>other>article never>verb>article never>verb>preposition noun>article>number noun>object>particle
          noun>owner>part noun>particle>and noun>particle>preposition noun>particle>subject noun>particle>to
          noun>preposition>number noun>subject>adverb noun>subject>subject noun>then>article noun>verb>contraction
          number>adjective>part number>amount>number number>and>particle number>article>part
          number>because>contraction number>contraction>article number>kit>subject number>number>praise
          number>number>subject number>of>pointer number>particle>number number>praise>and
          number>preposition>number number>unit>ing number>unit>particle number>verb>article number>verb>owner
          order>amount>particle order>article>other order>number>and order>of>article order>subject>and
          order>unit>number other>amount>preposition other>article>kit other>article>other other>because>article
          other>because>contraction other>because>pointer other>contraction>ing other>kit>subject other>noun>adverb
          other>noun>subject other>noun>verb other>other>verb other>part>verb other>particle>article
          other>particle>because other>person>verb other>pointer>be other>s>preposition other>s>verb
          other>subject>article other>subject>other other>to>owner other>verb>part owned>preposition>article
          owner>part>have owner>part>modal owner>person>did owner>person>do part>adjective>never part>adjective>to
          part>adverb>part part>article>compared part>article>part part>be>adverb part>ing>particle
          part>kit>preposition part>never>article part>never>verb part>noun>never part>number>unit
          part>other>particle part>part>and part>particle>adjective part>particle>be part>particle>contraction
          part>particle>part part>particle>preposition part>preposition>other part>preposition>owner
          particle>adjective>article particle>and>particle particle>and>preposition particle>preposition>other
          particle>to>preposition particle>to>subject pointer>be>article praise>and>adjective
          praise>other>contraction praise>verb>preposition preposition>adjective>other preposition>article>number
          preposition>article>of preposition>article>praise preposition>ing>article preposition>noun>contraction
          preposition>number>adjective preposition>number>number preposition>of>article preposition>owner>owned
          preposition>owner>person preposition>subject>do preposition>to>article preposition>to>other
          preposition>unit>number s>adverb>preposition s>and>s subject>adverb>verb subject>article>number
          subject>be>adverb subject>be>want subject>did>owner subject>did>pointer subject>do>never subject>have>ed
          subject>modal>hello subject>modal>never subject>modal>other subject>modal>verb subject>modal>want
          subject>never>want subject>other>number subject>other>other subject>part>verb subject>preposition>pointer
          subject>subject>be subject>subject>verb subject>verb>never subject>want>article then>article>noun
          then>article>other then>verb>preposition to>noun>preposition to>other>particle to>verb>adjective
          to>verb>article to>verb>subject unit>article>other unit>article>s unit>preposition>because
          verb>adjective>and verb>adjective>because verb>adjective>noun verb>adjective>subject verb>and>amount
          verb>and>particle verb>article>er verb>article>particle verb>article>praise verb>article>unit
          verb>article>verb verb>ing>article verb>never>noun verb>object>contraction verb>object>particle
          verb>object>verb verb>owner>other verb>owner>part verb>part>article verb>particle>adverb
          verb>particle>article verb>particle>hello verb>particle>kit verb>particle>part verb>particle>particle
          verb>particle>verb verb>pointer>subject verb>preposition>adverb verb>preposition>article
          verb>preposition>owner verb>preposition>subject verb>subject>contraction verb>subject>particle
          verb>verb>verb want>amount>verb want>to>other
        `,
      ],
      [
        -0.25,
        `
          adjective>adjective>adjective adjective>adverb>contraction adjective>amount>because
          adjective>amount>preposition adjective>because>contraction adjective>never>verb adjective>noun>adjective
          adjective>noun>particle adjective>noun>preposition adjective>number>unit adjective>part>and
          adjective>part>ing adjective>part>kit adjective>preposition>owner adjective>subject>does
          adjective>subject>modal adjective>then>verb adjective>to>adjective adjective>unit>and
          adjective>unit>because adjective>verb>owner adjective>verb>particle adverb>adjective>part
          adverb>because>subject adverb>preposition>owner amount>of>article amount>preposition>article
          and>adjective>part and>adjective>preposition and>adjective>verb and>amount>of and>article>other
          and>contraction>adjective and>contraction>adverb and>contraction>ing and>contraction>other
          and>contraction>preposition and>contraction>subject and>contraction>want and>never>article
          and>noun>subject and>number>preposition and>other>article and>particle>adjective and>particle>adverb
          and>subject>ed and>subject>noun and>subject>other and>then>verb and>verb>adjective and>verb>object
          and>verb>preposition article>adjective>because article>adjective>noun article>adjective>of
          article>adjective>preposition article>amount>because article>ing>kit article>ing>other article>kit>and
          article>kit>because article>kit>particle article>kit>verb article>noun>and article>noun>particle
          article>noun>subject article>noun>then article>order>unit article>other>contraction
          article>other>particle article>part>and article>part>part article>s>because article>unit>number
          article>unit>verb article>verb>because article>verb>preposition because>article>adjective
          because>article>order because>because>article because>contraction>do because>contraction>never
          because>contraction>particle because>contraction>verb because>do>pointer because>owner>noun
          because>subject>adjective because>subject>ed because>subject>never because>subject>noun
          because>subject>unit compared>preposition>subject contraction>adjective>because
          contraction>article>article contraction>article>hello contraction>article>kit
          contraction>because>contraction contraction>did>adverb contraction>did>other contraction>did>subject
          contraction>ed>particle contraction>ed>subject contraction>ing>adverb contraction>never>article
          contraction>noun>article contraction>number>preposition contraction>other>preposition
          contraction>other>subject contraction>owner>noun contraction>subject>and contraction>verb>preposition
          do>subject>preposition does>preposition>article ed>particle>preposition have>article>adjective
          have>article>amount have>article>other hello>and>article hello>end>end hello>part>preposition
          hello>subject>verb hello>verb>adjective hello>verb>particle ing>particle>because kit>because>contraction
          kit>contraction>article kit>noun>article kit>particle>part kit>preposition>number never>article>noun
          never>hello>preposition never>other>verb never>verb>object never>verb>verb noun>article>order
          noun>article>part noun>because>subject noun>number>number noun>number>preposition noun>part>noun
          noun>particle>because noun>particle>number noun>subject>modal noun>subject>verb noun>verb>preposition
          number>and>article number>and>contraction number>because>subject number>kit>and number>other>subject
          number>s>of number>to>article number>unit>and number>unit>never number>unit>verb object>preposition>owner
          of>owner>part or>owner>part or>verb>particle order>part>preposition order>to>subject order>unit>other
          order>unit>verb other>adjective>part other>article>ing other>because>owner other>does>article
          other>noun>number other>noun>preposition other>number>number other>particle>verb
          other>preposition>article other>preposition>owner other>subject>verb other>verb>particle owner>part>and
          owner>part>number owner>part>part owner>part>particle owner>part>preposition owner>person>because
          part>adjective>noun part>adjective>other part>adverb>contraction part>adverb>noun part>adverb>verb
          part>and>then part>and>verb part>hello>and part>ing>number part>never>ing part>noun>adverb
          part>noun>article part>noun>number part>number>number part>part>adjective part>particle>number
          part>particle>of part>particle>person part>to>part part>to>verb part>verb>subject particle>article>other
          particle>because>article particle>number>unit particle>of>number particle>of>subject particle>owner>part
          particle>part>adjective particle>part>preposition particle>particle>preposition
          particle>preposition>adjective particle>preposition>contraction particle>subject>want particle>to>verb
          particle>verb>preposition preposition>article>adjective preposition>article>ing preposition>article>noun
          preposition>article>order preposition>article>s preposition>article>verb preposition>contraction>ing
          preposition>number>and preposition>owner>kit preposition>part>to preposition>preposition>owner
          preposition>subject>and preposition>subject>because s>part>adjective s>preposition>article
          subject>adjective>part subject>adjective>verb subject>adverb>because subject>be>adjective
          subject>be>because subject>be>verb subject>because>owner subject>because>subject
          subject>contraction>article subject>did>subject subject>do>preposition subject>does>number
          subject>have>did subject>have>other subject>have>preposition subject>kit>particle subject>modal>noun
          subject>never>verb subject>noun>article subject>other>article subject>part>ing subject>part>particle
          subject>particle>preposition subject>preposition>number subject>preposition>owner subject>subject>modal
          subject>unit>preposition then>particle>to to>article>adjective to>article>kit to>owner>part
          to>verb>preposition unit>number>number unit>number>unit unit>particle>subject unit>preposition>article
          verb>adjective>preposition verb>adverb>contraction verb>article>adjective verb>article>order
          verb>article>s verb>because>subject verb>because>verb verb>noun>part verb>number>number
          verb>object>adjective verb>owner>person verb>particle>amount verb>particle>compared verb>particle>other
          verb>preposition>object verb>preposition>pointer verb>subject>and verb>subject>because verb>subject>did
          verb>subject>other verb>subject>subject verb>subject>verb verb>verb>adjective verb>verb>article
          verb>verb>owner verb>verb>particle verb>verb>subject
        `,
      ],
      [
        -0.5,
        `
          adjective>verb>article adverb>because>contraction and>article>kit and>noun>article and>number>and
          and>owner>part and>particle>article and>particle>preposition and>preposition>article and>verb>article
          article>adjective>part article>noun>number article>number>unit article>other>because article>part>verb
          article>unit>and because>subject>want contraction>adverb>subject contraction>ing>and
          contraction>want>preposition hello>subject>preposition kit>particle>and never>noun>subject
          never>verb>subject noun>article>amount noun>preposition>owner number>contraction>ing
          number>number>preposition number>unit>to order>unit>and order>unit>because other>article>noun
          other>because>subject other>part>particle other>subject>modal part>be>article part>noun>adjective
          part>noun>verb part>particle>and part>preposition>number part>preposition>verb part>verb>article
          particle>article>kit particle>because>contraction preposition>article>part preposition>owner>other
          preposition>owner>part subject>ed>subject subject>other>subject subject>verb>contraction
          subject>verb>other subject>want>object then>article>part then>noun>particle verb>article>amount
          verb>noun>verb verb>number>unit verb>particle>and verb>particle>contraction verb>pointer>particle
          verb>preposition>contraction verb>subject>adjective verb>to>subject
        `,
      ],
      [-0.75, 'and>article>amount number>number>unit'],
      [-1, 'and>number>unit because>subject>preposition'],
    ],
    other: [
      [1.5, 'line'],
      [0.75, 'placed'],
      [0.5, 'may-open opens'],
      [-0.25, 'goes-on'],
    ],
    'first-kind': [
      [0.75, 'ing>adjective number>part number>then verb>owned'],
      [
        0.5,
        `
          adjective>contraction adjective>number article>contraction article>er contraction>and contraction>owned
          have>hello have>preposition hello>because hello>kit ing>pointer kit>number never>do never>number
          noun>pointer noun>praise number>never number>owner number>verb order>part other>and other>hello
          other>subject owner>owner part>number part>other part>person part>verb particle>contraction
          person>subject pointer>because praise>number preposition>adjective preposition>part unit>never verb>did
          verb>ed verb>other verb>praise
        `,
      ],
      [
        0.25,
        `
          adjective>adverb adjective>order adjective>praise adjective>subject adjective>verb adverb>and
          adverb>article adverb>never adverb>part adverb>person adverb>s amount>adjective amount>never and>compared
          and>est and>part and>s and>then article>because article>do article>hello article>number article>particle
          be>subject but>number but>subject contraction>adjective contraction>contraction contraction>hello
          contraction>order contraction>particle did>verb do>never do>owner do>particle do>person does>hello
          does>verb ed>do er>preposition have>adverb have>because have>particle hello>modal hello>s hello>verb
          ing>adverb ing>because ing>kit ing>owner kit>adjective kit>because kit>contraction kit>does kit>to
          never>adjective never>did never>ed never>praise never>then noun>because noun>compared noun>contraction
          noun>do noun>noun noun>then noun>to noun>want number>adverb number>because number>contraction
          number>order number>other number>owned object>because or>contraction or>or or>s order>adjective order>and
          other>adjective other>modal other>number other>part other>s other>verb owned>did owned>hello
          owner>contraction part>amount part>contraction part>do particle>amount particle>article particle>because
          particle>s pointer>number pointer>order pointer>pointer pointer>subject praise>contraction praise>have
          praise>order praise>particle praise>preposition praise>verb preposition>hello s>amount
          subject>contraction subject>est subject>hello subject>then then>unit then>verb unit>because verb>amount
          verb>contraction verb>number verb>pointer verb>s
        `,
      ],
      [
        -0.25,
        `
          adjective>does adjective>ing adjective>kit adjective>other adverb>adjective adverb>does adverb>other
          adverb>pointer amount>because amount>pointer amount>s amount>subject and>amount and>did and>ing and>of
          and>owner and>subject and>to and>unit article>did article>does article>pointer article>praise
          article>preposition article>s article>to article>unit be>hello because>be because>did because>does
          because>ing because>never because>noun because>other because>particle because>pointer because>preposition
          because>s because>subject because>to because>unit contraction>article contraction>because contraction>er
          contraction>noun contraction>number contraction>object contraction>of contraction>other contraction>owner
          contraction>pointer contraction>preposition contraction>to do>preposition do>subject est>contraction
          have>and hello>contraction hello>do hello>never hello>order hello>subject ing>and ing>article ing>noun
          kit>article kit>kit kit>part kit>preposition kit>subject never>because never>noun never>other never>owner
          never>pointer never>s never>to noun>adjective noun>article noun>owner noun>preposition noun>unit
          number>do number>does number>of number>unit or>article or>because or>never or>preposition order>article
          order>noun order>number order>order order>other order>particle order>unit order>verb other>amount
          other>article other>never other>particle owned>noun owned>other owned>owner owned>pointer owner>and
          owner>do owner>noun owner>number owner>pointer owner>subject part>article part>be part>because part>does
          part>ed part>hello part>or part>owned part>particle part>preposition part>subject particle>noun
          particle>number particle>particle particle>preposition person>contraction pointer>adverb pointer>be
          pointer>kit praise>adverb preposition>adverb preposition>article preposition>preposition preposition>s
          s>and s>kit s>number subject>because subject>did subject>does subject>ing subject>kit subject>modal
          subject>never subject>object subject>of subject>order subject>preposition subject>unit then>amount
          then>and to>verb unit>adverb unit>article unit>number unit>particle verb>because verb>have verb>ing
          verb>object verb>of verb>preposition verb>subject want>article
        `,
      ],
      [
        -0.5,
        `
          adjective>because adjective>part adjective>unit adverb>contraction adverb>preposition and>object
          article>be article>subject because>contraction because>number because>verb contraction>adverb
          contraction>be contraction>compared contraction>do contraction>ed hello>and kit>hello kit>particle
          noun>and noun>hello noun>particle number>amount number>to other>adverb other>noun other>other owner>kit
          part>never part>order part>then particle>then pointer>other pointer>verb praise>person praise>praise
          preposition>contraction preposition>number s>contraction subject>adverb subject>amount subject>and
          subject>noun subject>owner subject>s verb>compared verb>do verb>particle
        `,
      ],
      [-0.75, 'because>do'],
    ],
    'word-first-kind': [
      [0.75, 'keep>and so>verb'],
      [
        0.5,
        `
          3>and 5>preposition a>do add>because arms>subject as>contraction bend>article blow>other breathe>because
          breathe>number breathe>part bring>preposition bum>preposition calf>part come>article don't>number
          eight>other elbow>because elbows>to er>preposition everybody>because everybody>verb feel>and five>because
          five>pointer five>preposition get>kit go>adjective go>contraction good>verb hands>other have>preposition
          he's>preposition high>adjective hip>part i'm>article i>hello it's>adjective it's>ing it>kit it>subject
          joyce>hello keep>verb land>because lean>number leave>other let>subject like>verb make>preposition
          make>verb my>contraction never>preposition no>number no>verb okay>s on>ing only>part other>verb
          out>article out>part pick>verb pull>verb punch>and racks>does reach>article rest>contraction
          rings>because roll>other round>noun second>subject sit>article slow>part so>amount so>other so>part
          somebody>contraction somebody>number stay>verb take>verb ten>adverb that's>adjective that's>and
          that's>hello that's>number that's>order that's>part that>because the>adjective the>part
          there's>contraction they>verb think>verb third>part thirty>adjective three>because three>s twelve>other
          two>adjective two>noun up>preposition walk>adverb watch>because you're>subject
        `,
      ],
      [
        0.25,
        `
          10>number 10>unit 12>and 3>number 5>article 8>then a>contraction a>er about>subject after>adverb aim>part
          all>hello alright>verb and>compared and>est and>part and>s and>then ankling>adjective any>article as>verb
          ask>because back>because back>noun balance>subject because>amount because>part because>unit before>noun
          belly>ing bend>adverb bend>to big>because both>adverb both>number bottom>and breathe>adjective
          breathe>adverb breathe>ing breathe>kit breathe>noun bring>because bring>number but>number but>subject
          by>other change>and change>noun chat>subject check>be check>verb chest>preposition come>pointer count>and
          cross>verb do>never do>person don't>adjective don't>do don't>then don't>unit down>verb drag>particle
          drop>to drop>verb eight>adjective eight>be eight>hello eight>part eight>verb elbows>because elbows>part
          evening>subject evening>verb every>contraction everyone>subject everything>verb exhale>preposition
          eyes>adjective face>article feel>because feet>and feet>particle fifteen>amount fifteen>and
          fifteen>subject find>amount find>particle first>part five>contraction five>verb fold>adjective
          for>article for>subject forearm>part forty>and four>because four>particle from>other gently>article
          get>hello get>particle get>preposition give>subject go>amount go>part go>praise goblet>subject
          goblet>verb good>and good>particle got>verb grab>kit half>preposition hands>and hang>and hang>subject
          hang>then have>because have>hello have>particle he>because heel>adjective heel>particle heels>adjective
          here's>article hip>verb hips>other hm>article hold>or hold>verb hold>want hollow>adjective hook>and
          how>other how>subject hug>owner i'd>verb i'll>adjective i'll>contraction i'll>hello i'll>noun i'll>part
          i'm>because i'm>hello i'm>order i'm>preposition i've>contraction i've>noun i've>part i>contraction
          if>number if>praise in>subject inner>part it's>kit it's>order it>contraction it>other it>part it>person
          jump>preposition just>verb keep>pointer keep>s keep>to knee>article knees>adverb knees>never knees>number
          knees>other knees>unit last>adjective last>and last>contraction lean>other leave>be left>praise
          let's>adverb let's>subject let>contraction let>kit let>never like>because like>part like>preposition
          little>part long>noun long>number look>part look>subject lovely>adjective lovely>hello lovely>preposition
          low>verb lower>number lower>owner make>because make>noun me>because mind>subject mine's>hello mine>other
          mine>verb mini>part minute>because morning>have move>to move>verb my>verb nearly>and never>kit
          never>never next>subject nice>never nice>number nice>order nine>and ninety>particle no>adjective no>ed
          no>hello no>or no>preposition nobody>adjective nobody>number not>because not>do not>verb nothing>article
          notice>part off>contraction on>and one>adverb one>contraction one>ed one>hello one>number one>other
          one>praise one>to or>contraction or>or or>s other>noun other>part out>adjective out>subject over>kit
          palms>verb park>preposition pause>and pause>article pedal>because people>subject please>article
          press>contraction press>pointer pretend>because pull>because pull>never pull>number push>adverb
          put>adverb put>number put>or quick>verb quicker>verb rest>adjective ribs>verb right>day right>other
          right>owner right>particle rotate>verb row>subject same>article same>noun same>other same>preposition
          same>verb scale>preposition second>does second>preposition set>unit settle>article settle>because
          seven>preposition she>number shift>amount shin>kit shins>article shoulder>s shuffle>preposition sit>kit
          sit>subject six>subject slow>contraction slow>never slow>then slow>verb socks>article somebody's>and
          somebody>noun sorry>article sorry>contraction squat>does squat>part squats>number squeeze>hello
          squeeze>then stack>verb start>unit stay>adverb stay>and stay>contraction steady>subject stop>article
          stop>number stop>particle stop>verb straight>ing straight>particle straighten>preposition
          suitcase>subject swap>adjective switch>adjective take>noun take>other take>subject ten>adjective
          thank>article thank>verb thanks>hello that'll>hello that's>did that's>never that's>particle
          that's>preposition that's>s that>order that>preposition then>unit then>verb there's>because there>other
          there>particle they're>verb they've>and they>particle thighs>noun think>adjective this>pointer
          thread>verb three>contraction three>owner three>part thumbs>noun tilt>verb time>noun toes>hello too>verb
          top>contraction towards>adjective tuck>noun tuck>subject turn>or twelve>order twelve>verb twenty>because
          twenty>have twenty>preposition two>have two>subject two>then um>verb use>article use>ed use>noun use>verb
          walk>particle we'll>other we'll>verb we're>particle we>article we>because we>pointer weight>verb
          whatever>because when>article where>article where>verb whether>subject while>article while>preposition
          who>adjective with>other work>other yes>noun yes>number you'll>noun you're>and you're>contraction
          you're>kit you're>noun you're>person you've>number you've>verb you>ing you>or you>subject your>owner
          zip>adjective
        `,
      ],
      [
        -0.25,
        `
          12>subject 2>and 2>because 2>hello 5>and a>never about>number actually>article after>number after>verb
          all>part and>amount and>did and>ing and>of and>owner and>subject and>to and>unit another>noun any>verb
          anybody>other anybody>verb arms>adjective arms>adverb arms>because bar>article because>other before>verb
          bell>part bend>noun bend>part bend>then bend>verb big>noun both>contraction both>part bottom>because
          bottom>verb breathe>preposition bridges>then bring>contraction bring>part bring>particle build>noun
          chest>noun chest>particle chin>verb come>and come>hello come>noun do>preposition don't>adverb don't>other
          don't>owner don't>particle don't>to don't>verb double>because down>adjective down>noun down>preposition
          draw>noun drive>noun drop>noun ease>never eight>contraction eight>praise elbow>part elbows>noun
          elbows>particle feel>adjective feet>because feet>hello feet>subject find>other five>adjective
          five>subject float>and for>verb from>noun from>subject front>part front>verb give>because go>because
          go>preposition good>hello grab>subject grab>verb half>subject hands>preposition hang>contraction
          hang>number hang>part hang>preposition have>adjective have>and have>verb heavier>because heel>order
          heels>verb high>part hip>order hold>article hold>hello hold>part hold>preposition hook>verb i'd>because
          i'll>because i'll>never i'm>adjective i'm>and i'm>noun i'm>number i'm>other i'm>subject i've>order
          i've>owner i've>verb i>adjective i>amount i>do i>ed i>have i>ing i>noun i>owner i>subject ice>because
          if>adjective if>adverb if>amount if>do if>does if>have if>ing if>never if>noun if>or if>other if>particle
          if>preposition if>subject if>unit imagine>contraction in>article instead>verb is>hello it's>amount
          it's>be it's>other it's>owned it's>preposition it>and it>because it>noun it>owner just>article
          keep>adjective keep>because keep>never knee>because knees>because knees>contraction knees>noun knees>part
          knees>verb l>verb leave>contraction leave>verb let's>contraction let's>number let's>part let>adverb
          let>other let>preposition lie>kit like>and like>never like>other little>noun long>particle
          look>contraction look>hello look>number lose>because lower>contraction make>amount make>other
          make>subject mine>article morning>verb move>noun my>number my>preposition my>s next>contraction next>verb
          nice>adjective no>ing no>s no>subject nobody's>noun not>noun now>adjective now>part now>pointer
          now>preposition number>verb okay>verb on>contraction on>other one>and one>kit one>part only>adjective
          only>because only>contraction or>article or>because or>never or>preposition other>adjective other>because
          other>preposition out>because out>particle out>preposition palms>part pause>because peel>verb
          people>contraction pick>and pick>contraction picture>ing press>because press>verb pull>adjective
          pull>part push>hello push>noun push>particle push>preposition put>article put>contraction put>particle
          put>preposition put>subject reach>and reach>part reds>verb rest>part rest>preposition ribs>never
          right>adjective right>order rings>verb roll>and roll>hello same>adjective same>contraction second>part
          second>particle second>unit see>verb set>adverb sharp>never shoulder>adjective shoulders>part
          shoulders>verb sit>adverb sit>and sit>particle sit>praise sit>preposition six>s six>verb slide>adverb
          slide>because slow>adjective so>do so>noun so>preposition so>s soak>subject soften>noun somebody>because
          somebody>order somebody>verb squash>noun stand>and stand>because stand>hello stand>never stay>because
          step>because step>then stop>contraction stop>never stop>owner straight>article straighten>noun
          swap>because swing>adjective switch>part take>adjective take>kit take>part tell>contraction ten>other
          thank>subject that's>adverb that's>compared that's>contraction that's>ed that's>ing that>part the>and
          the>be the>owned the>subject the>verb then>amount then>and there's>other there>never there>subject
          they>article this>article this>contraction this>other three>amount three>praise three>subject tip>verb
          to>verb today>subject toes>particle toes>subject top>verb turn>article turn>hello turn>subject
          twelve>because twelve>noun two>adverb two>amount two>hello two>kit two>preposition up>then use>because
          walk>amount walk>and walk>article walk>number walk>subject water>verb we'd>subject we'll>article
          we'll>number we'll>order we'll>preposition we're>number we've>number we>adverb we>number when>other
          which>contraction whoever's>pointer with>number with>preposition yes>contraction you'd>verb
          you're>article you're>because you're>preposition you've>and you>noun you>part you>praise you>preposition
          your>and your>verb zip>and
        `,
      ],
      [
        -0.5,
        `
          10>adjective a>kit a>other a>preposition all>adjective and>object back>part because>number bend>because
          breathe>particle bring>verb do>because feel>contraction five>number from>verb half>verb hands>part
          hips>number hold>number i'd>number i'll>verb i've>because i>number i>pointer i>preposition if>article
          if>kit it's>adverb it's>contraction it's>part it's>subject it>never just>part keep>number last>number
          last>subject lean>and lean>verb let>article lift>noun lovely>praise lower>verb make>number my>kit
          nice>and now>article now>verb on>number one>because only>verb press>and press>particle push>other
          push>verb same>number so>subject somebody's>part stand>adjective stop>because take>and that's>do
          there's>hello this>verb twelve>part twenty>verb walk>because while>subject you're>hello you've>subject
          you>because you>verb
        `,
      ],
      [-0.75, "breathe>verb if>contraction if>verb let>verb there's>subject"],
    ],
    'class-word': [
      [1, 'preposition>back'],
      [
        0.75,
        `
          manner>i manner>if number>4 other>do other>rings other>same other>you'll part>the preposition>i
          preposition>it's verb>no
        `,
      ],
      [
        0.5,
        `
          and>both article>and article>if article>knuckles auxiliary>and because>stop manner>come number>down
          number>other number>six number>so number>then number>there's opener>come opener>if opener>nice
          opener>rest opener>sit opener>that's other>3 other>anyone other>arms other>backs other>between other>both
          other>breath other>elbows other>eyes other>fifteen other>finish other>hands other>have other>if
          other>jump other>last other>let's other>lie other>my other>no other>okay other>ready other>second
          other>see other>steady other>straps other>thank other>there other>wait other>walk part>for part>knees
          part>look part>tall part>your preposition>breathe preposition>done preposition>hold preposition>i'm
          preposition>if preposition>let preposition>no preposition>off preposition>right preposition>second
          preposition>that's preposition>then preposition>what preposition>when pronoun>about unit>it unit>slow
          verb>half verb>i verb>long
        `,
      ],
      [
        0.25,
        `
          and>in and>sit article>3 article>at article>hamstrings article>slow article>the article>um
          auxiliary>don't auxiliary>down auxiliary>is auxiliary>leave auxiliary>mine auxiliary>no because>go
          ing>don't ing>if ing>my ing>one ing>you've kit>back kit>breathe kit>do kit>let kit>no kit>on manner>about
          manner>above manner>don't manner>i've manner>keep manner>leg manner>peel manner>then manner>three
          manner>two manner>when never>there number>3 number>breath number>done number>have number>i number>it
          number>knees number>last number>nice number>past number>rest number>right number>round number>set
          number>seven number>squat number>stop number>ten number>twenty opener>both opener>chest opener>elbows
          opener>find opener>four opener>half opener>i opener>i've opener>in opener>keep opener>last opener>minute
          opener>out opener>roll opener>soft other>a other>all other>an other>anything other>anyway other>baby
          other>back other>be other>before other>blow other>breathe other>carry other>cross other>don't
          other>dumbbells other>elbow other>everyone's other>feel other>feet other>five other>forty other>front
          other>good other>grab other>he other>heel other>heels other>hips other>hold other>hug other>i've
          other>imagine other>keep other>knees other>lovely other>lunges other>make other>minute other>nobody's
          other>nothing other>other other>plank other>pop other>press other>rows other>sets other>shake
          other>shuffle other>sit other>so other>some other>somebody other>sore other>stand other>start
          other>station other>straight other>ten other>then other>top other>um other>until other>we'll other>you're
          part>big part>breathe part>chest part>good part>hands part>have part>hips part>no part>okay part>pain
          part>push part>reach part>same part>sit part>slide part>squeeze part>take part>ten part>too preposition>3
          preposition>5 preposition>add preposition>bottom preposition>don't preposition>eight preposition>feet
          preposition>going preposition>hang preposition>lovely preposition>my preposition>some preposition>stop
          preposition>think preposition>we preposition>we'll pronoun>before pronoun>can't pronoun>good pronoun>if
          pronoun>it's pronoun>let pronoun>once pronoun>only pronoun>rest pronoun>right pronoun>you pronoun>you're
          unit>don't unit>no unit>step unit>to unit>two unit>while unit>your verb>another verb>bar verb>do
          verb>flat verb>from verb>it's verb>last verb>lift verb>my verb>same verb>slow verb>step verb>that's
          verb>then verb>twenty
        `,
      ],
      [
        -0.25,
        `
          and>a and>don't and>heel and>i and>it's and>let and>no and>the and>you article>a article>back
          article>before article>bottom article>chair article>chest article>feet article>first article>floor
          article>good article>hands article>heels article>hip article>hips article>knee article>knees article>legs
          article>little article>morning article>one article>other article>second article>side article>sit
          article>whole auxiliary>a auxiliary>done auxiliary>it auxiliary>keep auxiliary>sit auxiliary>to because>i
          because>if because>it because>it's because>the because>well because>you because>you're because>your
          contraction>done contraction>go contraction>not ing>on ing>you ing>your kit>and kit>hold kit>instead
          kit>it kit>just kit>next kit>press kit>so kit>up manner>3 manner>down manner>it manner>knee manner>knees
          manner>line manner>now manner>one manner>same manner>so manner>up manner>you're never>a never>let
          number>as number>each number>feet number>five number>foot number>for number>hundred number>i'd number>is
          number>k number>keep number>leg number>long number>metres number>minutes number>nine number>now number>of
          number>one number>seconds number>sets number>side number>thirty number>times number>to opener>and
          opener>as opener>bring opener>do opener>for opener>go opener>leg opener>morning opener>put opener>round
          opener>shake opener>stuff opener>work other>are other>by other>calf other>chair other>coming other>curls
          other>does other>face other>fold other>four other>get other>goes other>grip other>half other>how other>in
          other>it other>left other>leg other>legs other>level other>long other>me other>mind other>moving
          other>not other>old other>point other>post other>put other>quick other>reach other>remember other>ribs
          other>sand other>shin other>side other>since other>slide other>squat other>take other>that's other>them
          other>they other>they've other>this other>today other>towel other>tuck other>under other>way other>we're
          other>were other>what other>which other>who other>who's other>with other>you've part>a part>are part>bend
          part>button part>come part>drive part>elbows part>first part>five part>flat part>goes part>height part>is
          part>last part>let part>on part>open part>out part>raise part>right part>roll part>soft part>stay
          part>straight part>that part>when part>wide preposition>after preposition>again preposition>an
          preposition>bar preposition>before preposition>each preposition>elbows preposition>find preposition>first
          preposition>flat preposition>front preposition>give preposition>hand preposition>here preposition>high
          preposition>in preposition>is preposition>of preposition>please preposition>sixty preposition>slow
          preposition>slowly preposition>straight preposition>swing preposition>tall preposition>the
          preposition>till preposition>to preposition>toe preposition>top preposition>where preposition>with
          preposition>you preposition>you'd preposition>you'll preposition>you've preposition>your pronoun>a
          pronoun>all pronoun>bend pronoun>don't pronoun>down pronoun>else pronoun>get pronoun>go pronoun>know
          pronoun>out pronoun>see pronoun>there unit>as unit>between unit>each unit>four unit>here unit>left
          unit>of unit>out unit>so unit>this unit>three unit>you're verb>2 verb>a verb>all verb>arms verb>at
          verb>back verb>feet verb>first verb>five verb>for verb>hands verb>hold verb>i've verb>lower verb>one
          verb>put verb>some verb>the verb>them verb>there verb>this verb>to verb>you verb>you'll verb>your
        `,
      ],
      [
        -0.5,
        `
          and>then article>leg auxiliary>not ing>a ing>it kit>sit manner>and manner>as manner>for manner>right
          number>more number>slow opener>lovely other>4 other>again other>apart other>at other>away other>because
          other>call other>come other>each other>every other>foot other>forward other>knee other>next other>now
          other>of other>once other>or other>please other>stick other>than other>that other>to other>while
          part>blades part>don't part>find preposition>as preposition>between preposition>hips preposition>it
          preposition>one preposition>two preposition>you're unit>that's unit>you verb>as verb>it verb>tuck
          verb>ups
        `,
      ],
      [-0.75, 'other>lift other>stop other>when'],
    ],
    'class-ahead': [
      [0.75, 'kit>you opener>you other>walk other>want part>for pronoun>of'],
      [
        0.5,
        `
          and>away article>get article>what auxiliary>go auxiliary>now ing>no ing>on ing>push ing>that kit>where
          kit>you've manner>done manner>little manner>off manner>one manner>twenty number>as number>good number>it
          number>lovely number>stay number>step number>through number>times number>to number>up number>your
          opener>first opener>hands opener>knees opener>on opener>one opener>slow opener>with other>about
          other>anybody other>are other>as other>big other>breath other>bring other>comes other>couple other>down
          other>everybody other>facing other>foot other>goes other>got other>hand other>in other>knee other>last
          other>lunges other>minute other>on other>over other>quick other>rows other>seconds other>seven
          other>shake other>should other>spine other>that other>those other>three other>time other>you're
          other>yourself part>a part>again part>five part>of part>two preposition>body preposition>calf
          preposition>eighty preposition>four preposition>push preposition>quick preposition>take
          preposition>you're pronoun>knee pronoun>six unit>as unit>fifteen unit>out unit>that's verb>at verb>good
          verb>here verb>it verb>start
        `,
      ],
      [
        0.25,
        `
          and>as and>knees and>of and>two article>dead article>exercise article>home article>legs article>lot
          article>okay article>rounds article>thirty article>time article>was article>week auxiliary>at
          auxiliary>hand auxiliary>have auxiliary>is auxiliary>just auxiliary>leg auxiliary>long auxiliary>not
          auxiliary>on auxiliary>six auxiliary>through ing>3 ing>at ing>don't ing>i ing>like ing>of ing>or ing>out
          ing>that's kit>against kit>but kit>do kit>it kit>the ly>the manner>all manner>and manner>at manner>down
          manner>each manner>far manner>if manner>it manner>it's manner>like manner>no manner>of manner>right
          manner>seconds manner>stay manner>three manner>to manner>two manner>well manner>you've never>you number>3
          number>again number>away number>can number>have number>out number>push number>rounds number>sit
          number>stand number>straight number>that's number>the number>there's number>turn opener>for opener>it's
          opener>low opener>of opener>off opener>round opener>second opener>we other>3 other>5 other>again
          other>all other>any other>bars other>between other>breaths other>change other>each other>eight other>feet
          other>find other>finish other>forty other>go other>has other>home other>how other>hug other>it
          other>knees other>leg other>legs other>less other>line other>looking other>march other>my other>one
          other>pair other>people other>rolled other>round other>say other>set other>side other>slowly other>soft
          other>something other>steps other>still other>sure other>swinging other>takes other>think other>under
          other>until other>up other>we other>when other>wrists part>are part>as part>from part>go part>it part>my
          part>onto part>plank part>roll part>seconds part>step part>straight part>switch part>take part>that's
          part>together part>we preposition>as preposition>bench preposition>bum preposition>can preposition>did
          preposition>done preposition>eight preposition>finish preposition>foot preposition>for preposition>full
          preposition>goes preposition>heel preposition>holding preposition>home preposition>instead preposition>is
          preposition>mat preposition>not preposition>number preposition>off preposition>on preposition>pain
          preposition>pull preposition>reach preposition>rest preposition>sitting preposition>stretch
          preposition>years pronoun>an pronoun>as pronoun>got pronoun>hands pronoun>it pronoun>keep pronoun>know
          pronoun>long pronoun>put pronoun>seconds pronoun>shoulders pronoun>there pronoun>to pronoun>walk
          pronoun>your unit>after unit>go unit>one unit>the unit>up unit>we unit>your verb>arms verb>as verb>feel
          verb>hold verb>i've verb>in verb>next verb>off verb>on verb>one verb>over verb>press verb>shoulders
          verb>six verb>them verb>times verb>toe verb>together verb>two verb>was verb>whole
        `,
      ],
      [
        -0.25,
        `
          and>a and>back and>down and>on and>up article>2 article>and article>as article>at article>back
          article>can article>five article>for article>if article>in article>is article>it's article>knee
          article>leg article>of article>off article>on article>one article>out article>rows article>the
          article>times article>to article>want article>we auxiliary>don't auxiliary>for auxiliary>the because>a
          because>as because>the because>was because>your contraction>and contraction>to ing>can ing>do ing>four
          ing>one ing>so ing>the kit>flat kit>in kit>let kit>pull kit>push kit>that kit>up kit>you're kit>your
          ly>you manner>are manner>go manner>hold manner>i manner>i've manner>is manner>make manner>only
          manner>than manner>this number>10 number>5 number>at number>breaths number>call number>five number>going
          number>hips number>i'm number>last number>leg number>line number>minutes number>no number>press
          number>second number>slow number>strokes number>take number>this number>three number>twelve number>twenty
          opener>down opener>each opener>end opener>find opener>go opener>going opener>in opener>just opener>last
          opener>now opener>same opener>to other>6 other>after other>and other>away other>been other>before
          other>bend other>body other>both other>breathe other>came other>can other>carry other>count other>did
          other>door other>every other>floor other>front other>give other>good other>half other>hanging other>heavy
          other>heel other>her other>i other>i'll other>i'm other>leave other>morning other>much other>neck
          other>not other>of other>pressure other>pull other>put other>reach other>ready other>right other>said
          other>seen other>she other>sitting other>so other>stretch other>strides other>these other>thirty
          other>till other>tonight other>um other>was other>watch other>well other>what other>without other>wobble
          other>won't other>year other>you other>you've part>at part>away part>do part>don't part>down part>forward
          part>hands part>higher part>hold part>i part>if part>knees part>little part>no part>other part>pull
          part>shoulder part>shoulders part>ten part>the part>to part>you've preposition>about preposition>arms
          preposition>breathe preposition>bring preposition>eyes preposition>feet preposition>first
          preposition>floor preposition>front preposition>good preposition>got preposition>hands preposition>height
          preposition>hips preposition>if preposition>it's preposition>just preposition>legs preposition>let
          preposition>like preposition>long preposition>no preposition>or preposition>out preposition>over
          preposition>stop preposition>think preposition>toes preposition>twenty preposition>two preposition>wall
          preposition>with preposition>you pronoun>chest pronoun>i pronoun>it's pronoun>my pronoun>no pronoun>out
          pronoun>see pronoun>take pronoun>then pronoun>this pronoun>till pronoun>whole unit>and unit>at unit>day
          unit>did unit>don't unit>if unit>of unit>on unit>side unit>so unit>that verb>3 verb>again verb>arm
          verb>be verb>bell verb>breath verb>it's verb>knee verb>lie verb>out verb>straight verb>we verb>when
        `,
      ],
      [
        -0.5,
        `
          and>it and>the and>your auxiliary>and auxiliary>two auxiliary>you ing>down kit>a kit>back manner>in
          manner>you're number>for number>it's number>then number>walk opener>as opener>eight opener>time
          other>close other>i've other>if other>keep other>okay other>punch other>push other>sets other>six
          other>some other>somebody other>somebody's other>than other>there other>they other>week part>want
          preposition>and preposition>it preposition>so preposition>want pronoun>knees pronoun>times pronoun>you
          unit>between unit>first unit>round unit>week verb>for verb>if verb>you're
        `,
      ],
      [-0.75, 'number>ones other>like part>not'],
    ],
    'kind-across': [
      [
        0.75,
        `
          adjective>verb>owner number>number>praise other>and>article other>because>pointer other>noun>owner
          subject>and>article subject>and>because
        `,
      ],
      [
        0.5,
        `
          adjective>article>adjective adjective>ing>preposition adjective>number>unit adjective>owner>part
          adjective>verb>article adverb>adjective>part adverb>adverb>preposition adverb>verb>particle
          article>contraction>article article>hello>and because>because>contraction day>and>contraction
          does>part>preposition hello>and>particle hello>contraction>verb ing>part>preposition kit>adverb>verb
          kit>article>kit kit>article>other kit>because>contraction kit>contraction>article kit>kit>preposition
          kit>part>adverb kit>part>noun noun>and>subject noun>article>verb noun>because>contraction
          noun>number>part noun>particle>because noun>verb>subject number>and>verb number>number>adjective
          number>part>adverb number>part>preposition number>praise>and number>verb>article order>part>preposition
          other>adjective>part other>never>other other>part>particle other>subject>did other>subject>modal
          other>verb>article other>verb>to part>adjective>noun part>adverb>because part>and>number
          part>noun>subject part>subject>modal part>then>verb particle>and>contraction particle>and>noun
          particle>article>noun particle>article>part particle>contraction>verb particle>number>of
          particle>number>unit particle>order>unit particle>particle>to particle>verb>owner particle>verb>particle
          pointer>part>adjective pointer>verb>particle preposition>adverb>preposition preposition>and>other
          preposition>because>contraction preposition>never>verb preposition>particle>preposition
          preposition>preposition>owner preposition>subject>verb preposition>verb>subject s>number>unit
          subject>adjective>and subject>adjective>part subject>contraction>article subject>hello>preposition
          subject>particle>number subject>preposition>number then>article>part unit>preposition>owner
          unit>verb>owner verb>adverb>noun verb>because>pointer verb>contraction>adverb verb>subject>want
          verb>verb>owner verb>verb>verb
        `,
      ],
      [
        0.25,
        `
          adjective>adjective>subject adjective>adverb>subject adjective>article>other adjective>article>part
          adjective>contraction>number adjective>noun>verb adjective>number>number adjective>number>verb
          adjective>other>because adjective>other>number adjective>part>ing adjective>part>particle
          adjective>particle>because adjective>particle>unit adjective>subject>do adverb>adjective>subject
          adverb>and>article adverb>and>because adverb>article>other adverb>because>subject
          adverb>contraction>adverb adverb>contraction>verb adverb>other>article adverb>other>subject
          adverb>particle>preposition amount>amount>preposition amount>because>owner amount>other>preposition
          article>adjective>amount article>amount>adjective article>noun>number article>other>does
          article>part>order article>part>to article>particle>subject article>verb>article be>adverb>preposition
          be>article>kit because>verb>preposition compared>preposition>number do>article>part does>to>verb
          does>verb>article does>verb>particle ed>and>verb ed>verb>subject hello>verb>particle ing>and>verb
          ing>owner>person ing>subject>verb ing>verb>article ing>verb>object ing>verb>particle kit>and>article
          kit>and>noun kit>does>preposition kit>other>noun kit>preposition>adverb kit>preposition>because
          kit>preposition>contraction kit>subject>particle kit>to>verb kit>verb>adjective kit>verb>article
          kit>verb>because noun>adjective>kit noun>adverb>article noun>and>noun noun>because>subject
          noun>kit>preposition noun>noun>noun noun>noun>particle noun>noun>preposition noun>other>contraction
          noun>part>particle noun>part>preposition noun>particle>adjective noun>particle>to noun>preposition>number
          noun>preposition>part noun>subject>be noun>subject>have noun>subject>never noun>subject>verb
          noun>verb>contraction noun>verb>object noun>verb>particle noun>verb>preposition number>adjective>amount
          number>and>adverb number>and>particle number>and>then number>article>amount number>article>unit
          number>contraction>did number>number>amount number>number>article number>number>because
          number>number>other number>other>subject number>other>verb number>particle>and number>particle>verb
          number>s>of number>verb>preposition other>adjective>unit other>and>verb other>article>adjective
          other>because>article other>contraction>article other>contraction>verb other>do>never other>do>verb
          other>hello>article other>never>article other>noun>particle other>number>number other>order>amount
          other>other>noun other>owner>adjective other>owner>particle other>particle>and other>pointer>be
          other>preposition>article other>preposition>number other>subject>be other>subject>does
          other>subject>never other>subject>part other>verb>particle other>verb>preposition part>adverb>adjective
          part>adverb>verb part>and>contraction part>and>subject part>article>kit part>article>noun
          part>article>other part>article>part part>because>adjective part>because>amount part>because>owner
          part>compared>preposition part>contraction>want part>hello>subject part>never>verb part>number>subject
          part>other>does part>other>particle part>part>and part>part>be part>part>does part>part>particle
          part>part>preposition part>part>to part>part>verb part>particle>contraction part>particle>person
          part>preposition>adjective part>subject>be part>verb>adverb part>verb>article part>verb>owner
          part>want>to particle>adjective>kit particle>adverb>never particle>and>then particle>article>article
          particle>because>adjective particle>never>other particle>noun>number particle>noun>object
          particle>number>article particle>number>preposition particle>order>subject particle>other>article
          particle>part>adverb particle>part>and particle>part>article particle>part>ing particle>particle>part
          particle>particle>particle particle>pointer>be particle>preposition>ing particle>s>verb
          particle>subject>be particle>subject>modal particle>to>verb particle>verb>preposition
          pointer>be>adjective praise>part>particle praise>preposition>article praise>verb>preposition
          preposition>adjective>adjective preposition>article>number preposition>contraction>adjective
          preposition>owner>person preposition>preposition>part preposition>preposition>subject
          preposition>subject>adverb preposition>subject>did preposition>verb>particle preposition>verb>preposition
          preposition>want>particle s>and>verb s>because>subject s>part>adjective s>subject>verb s>verb>preposition
          subject>adjective>noun subject>adverb>verb subject>amount>preposition subject>amount>subject
          subject>article>noun subject>because>hello subject>contraction>did subject>contraction>ing
          subject>did>article subject>never>verb subject>number>contraction subject>number>number
          subject>part>article subject>part>does subject>part>verb subject>particle>hello
          subject>preposition>preposition subject>to>article subject>verb>adverb subject>verb>to subject>verb>verb
          to>verb>adverb unit>article>other unit>contraction>article unit>kit>particle unit>never>verb
          unit>number>number unit>part>particle unit>part>verb unit>particle>subject unit>subject>be
          verb>adjective>adjective verb>adjective>part verb>adjective>particle verb>adverb>preposition
          verb>and>amount verb>article>ing verb>article>number verb>article>other verb>hello>subject
          verb>kit>preposition verb>never>other verb>noun>article verb>number>adjective verb>number>number
          verb>other>contraction verb>part>particle verb>particle>number verb>preposition>owner verb>subject>modal
          verb>subject>noun verb>then>article verb>verb>article verb>verb>subject want>article>adjective
        `,
      ],
      [
        -0.25,
        `
          adjective>adjective>kit adjective>adjective>preposition adjective>adverb>contraction
          adjective>adverb>verb adjective>and>adjective adjective>and>because adjective>article>ing
          adjective>other>verb adjective>part>article adjective>part>contraction adjective>part>ed
          adjective>part>preposition adjective>verb>noun adjective>verb>part adjective>verb>subject
          adjective>verb>to adverb>adjective>and adverb>adverb>verb adverb>and>contraction adverb>and>subject
          adverb>subject>modal adverb>verb>owner adverb>verb>preposition amount>amount>article amount>subject>do
          amount>subject>modal and>verb>article and>verb>owner and>verb>particle and>verb>preposition
          and>verb>subject article>adjective>noun article>adjective>part article>kit>particle
          article>kit>preposition article>other>verb article>part>particle be>number>unit because>adjective>because
          because>contraction>did because>part>verb because>subject>does because>subject>verb because>subject>want
          compared>because>subject did>number>unit do>verb>particle does>adjective>amount does>because>subject
          does>number>preposition hello>and>article hello>other>contraction hello>part>preposition
          hello>particle>to hello>verb>owner ing>article>adjective ing>article>kit ing>article>other
          ing>preposition>article ing>subject>particle kit>adverb>particle kit>article>adjective kit>article>part
          kit>or>article kit>part>preposition kit>preposition>article kit>preposition>subject kit>subject>part
          modal>hello>subject modal>verb>article modal>verb>owner modal>verb>particle never>verb>particle
          noun>adjective>noun noun>adverb>subject noun>article>number noun>be>number noun>because>do
          noun>contraction>number noun>noun>owner noun>number>and noun>number>preposition noun>part>ing
          noun>pointer>be noun>preposition>article noun>subject>other noun>verb>owner number>adjective>kit
          number>adjective>unit number>amount>of number>and>article number>and>contraction number>article>noun
          number>other>noun number>particle>preposition number>subject>verb number>unit>article number>unit>number
          number>unit>of number>unit>preposition number>verb>owner object>particle>preposition
          other>adjective>preposition other>amount>preposition other>and>hello other>and>never other>and>noun
          other>and>other other>contraction>other other>hello>subject other>ing>preposition other>never>verb
          other>noun>part other>noun>subject other>order>unit other>other>other other>owner>part
          other>preposition>because other>subject>contraction other>subject>kit other>subject>number
          other>subject>other other>verb>adjective other>verb>because other>verb>number other>verb>of
          other>verb>verb owner>adjective>part owner>part>be owner>part>part owner>part>particle
          owner>part>preposition owner>part>verb part>adjective>amount part>adjective>and part>adjective>particle
          part>adjective>verb part>adverb>particle part>and>article part>and>never part>and>noun part>and>then
          part>article>adjective part>article>compared part>article>unit part>because>contraction
          part>contraction>be part>contraction>verb part>do>never part>hello>particle part>noun>adjective
          part>noun>verb part>number>article part>part>adjective part>particle>adjective part>particle>and
          part>particle>article part>pointer>noun part>preposition>article part>verb>contraction part>verb>noun
          part>verb>to particle>adjective>because particle>adjective>never particle>adjective>particle
          particle>and>adverb particle>and>other particle>and>preposition particle>article>unit
          particle>article>verb particle>because>contraction particle>because>hello particle>because>owner
          particle>because>subject particle>contraction>did particle>preposition>article
          particle>preposition>subject particle>to>article particle>verb>number particle>verb>object
          particle>verb>part particle>verb>verb pointer>because>subject pointer>subject>do praise>and>adjective
          preposition>adjective>of preposition>and>verb preposition>article>kit preposition>article>order
          preposition>article>part preposition>article>unit preposition>article>verb
          preposition>contraction>article preposition>contraction>ing preposition>contraction>preposition
          preposition>kit>does preposition>kit>noun preposition>kit>preposition preposition>number>and
          preposition>number>number preposition>number>unit preposition>owner>part preposition>part>noun
          preposition>part>part preposition>preposition>to s>and>s s>because>contraction s>subject>did
          s>verb>adjective s>verb>owner s>verb>particle subject>and>amount subject>and>subject subject>and>then
          subject>hello>article subject>hello>subject subject>never>other subject>other>number
          subject>part>particle subject>part>preposition subject>particle>because subject>preposition>owner
          subject>subject>be subject>verb>noun subject>verb>part subject>verb>preposition to>verb>particle
          unit>and>article unit>article>adjective unit>article>unit unit>because>article unit>order>unit
          unit>verb>object verb>adjective>adverb verb>adjective>because verb>adjective>verb verb>adverb>because
          verb>and>article verb>and>verb verb>article>kit verb>article>noun verb>article>part verb>article>unit
          verb>because>subject verb>noun>of verb>other>preposition verb>other>subject verb>owner>part
          verb>particle>to verb>preposition>because verb>subject>other verb>subject>particle
          verb>subject>preposition verb>verb>adverb
        `,
      ],
      [
        -0.5,
        `
          adjective>and>hello adjective>part>adjective adjective>part>verb amount>because>contraction
          amount>number>unit because>contraction>article because>subject>be do>number>of does>number>unit
          hello>verb>subject kit>and>particle kit>because>owner noun>adjective>preposition noun>and>article
          noun>and>number noun>and>verb noun>because>article noun>subject>modal number>and>number
          number>article>adjective number>number>subject order>part>particle other>article>kit
          part>adjective>subject part>adverb>preposition part>and>part part>and>verb part>article>person
          part>subject>want part>verb>particle particle>and>verb particle>article>kit particle>subject>verb
          preposition>noun>noun subject>adjective>preposition subject>number>praise subject>other>subject
          subject>particle>subject subject>verb>object to>verb>article to>verb>preposition unit>and>verb
          unit>because>subject verb>part>noun verb>particle>because verb>subject>part
        `,
      ],
      [
        -0.75,
        `
          adjective>because>contraction adjective>verb>preposition number>number>number particle>and>particle
          subject>contraction>verb verb>contraction>want
        `,
      ],
    ],
    'word-class': [
      [1, 'on>manner'],
      [
        0.75,
        `
          back>article back>number done>other each>article feet>other go>verb in>pronoun is>and it>verb round>other
          up>other
        `,
      ],
      [
        0.5,
        `
          1>other again>article again>verb all>other arch>other are>unit away>part back>verb behind>verb bell>verb
          bit>verb bottom>because bottom>verb breathe>number bum>verb chair>other down>other eight>other end>other
          feet>and fine>and first>preposition flat>verb floor>opener four>because hand>verb hands>other hang>verb
          hard>other heels>other in>part it>and it>article it>part know>other lean>article lot>other middle>other
          middle>preposition more>and more>manner morning>other now>other off>and off>other once>pronoun one>other
          one>verb other>verb out>other please>other press>verb quiet>other rest>other rounds>and side>part
          sitting>other slowly>number squats>preposition straight>because stretch>number ten>because ten>number
          that>and that>contraction then>part there>opener there>other there>preposition thing>other three>article
          time>number today>other two>pronoun up>article up>number up>part way>number won't>other you>number
        `,
      ],
      [
        0.25,
        `
          'em>other 10>preposition 10>unit 3>number again>opener again>preposition ankle>preposition are>auxiliary
          arms>and arms>other away>article back>unit bar>other bar>verb been>other bent>verb between>because
          between>other between>verb box>and breathe>and breathe>because breathe>other breaths>opener chair>verb
          chest>part chin>other close>article curls>part did>article do>other don't>preposition done>opener
          down>article down>kit down>number down>verb drive>other drop>preposition each>verb ears>other
          eight>number eight>verb elbows>other feel>preposition fifteen>number fine>article fine>verb first>verb
          five>other five>preposition floor>because floor>contraction fold>preposition forward>manner four>number
          four>opener four>verb go>article go>never go>number go>part go>pronoun goes>article goes>kit going>other
          going>verb good>and good>opener good>pronoun hand>article hands>number hanging>preposition head>and
          heavy>number heavy>other heavy>part height>verb here>other here>verb hips>preposition hold>because
          hold>preposition in>manner in>opener in>verb inch>preposition inch>verb is>because it>contraction it>kit
          it>number it>opener knees>manner knees>verb leaves>preposition left>number left>opener left>preposition
          leg>auxiliary leg>because leg>never leg>other legs>verb level>verb lift>number lifts>number like>verb
          line>verb lot>preposition lovely>preposition low>and low>because lunges>opener mat>other me>pronoun
          minute>because more>article neck>verb next>part no>other now>opener off>opener okay>because on>and
          on>opener on>part on>preposition one>number one>opener ones>other other>contraction pair>preposition
          plank>other please>article presses>other pull>because push>number push>other raises>preposition
          reach>article rest>manner rest>pronoun right>verb rings>preposition rock>preposition rounds>preposition
          row>verb rows>other rows>preposition seconds>number set>number sets>contraction shoulder>preposition
          side>article side>auxiliary side>preposition sides>preposition six>and six>verb slow>part soft>other
          stand>and stand>contraction still>verb stop>because straight>manner strides>number swap>verb that>number
          that>opener them>because them>other them>pronoun then>opener there>article there>number there>part
          there>verb these>verb thighs>other thighs>verb this>manner this>verb those>article three>pronoun
          through>and time>and time>preposition times>verb to>because toes>other together>manner top>preposition
          top>pronoun touches>article twelve>and twenty>and two>auxiliary two>preposition two>verb ups>other
          wall>other wall>preposition want>other way>opener week>and weight>auxiliary weights>other well>article
          wide>part width>and work>other you>part you>unit
        `,
      ],
      [
        -0.25,
        `
          2>other 3>other 4>and 4>other 5>and a>kit a>manner a>number a>opener a>other a>part about>article
          again>because all>article all>opener all>pronoun always>verb and>article and>auxiliary and>kit and>manner
          and>never and>number and>opener and>part and>preposition and>pronoun anything>other arm>other arms>ly
          arms>number as>contraction as>manner as>pronoun at>article at>number away>and away>verb back>and
          back>preposition balance>auxiliary before>pronoun behind>pronoun belly>verb bench>other bent>other
          bent>part between>article big>other big>part bird>other blood>other blow>preposition body>other both>part
          breathe>preposition breaths>article bus>verb can>auxiliary cat>other chair>part chest>and chest>other
          chin>part coat>other come>preposition curls>and dead>manner dead>other doesn't>verb doing>article
          doing>number don't>other don't>verb done>verb each>other elbows>verb end>preposition even>because
          ever>other eye>other eyes>other far>because feel>other feet>article feet>preposition few>other
          fifty>number first>other five>contraction five>unit flat>other flat>preposition floor>number
          floor>preposition foot>number foot>other for>opener forward>and forward>number fours>verb full>unit
          get>number gets>other go>because goes>preposition going>preposition good>number good>part got>number
          hamstrings>other hand>other hang>preposition head>verb heel>other heels>preposition height>other
          height>part help>pronoun here>number higher>preposition hips>manner hips>never hips>part hold>article
          hold>number hold>pronoun hundred>and i>auxiliary i>never i>verb if>article if>contraction if>pronoun
          in>article in>other is>article is>opener it's>other it>preposition it>unit just>other keep>verb
          knee>article knee>contraction knee>other knees>because knees>never lad>other last>other leave>article
          left>article left>verb leg>ing leg>number leg>pronoun legs>manner like>other little>other
          look>preposition lovely>other make>other mat>contraction middle>contraction minute>and minute>number
          minute>preposition minutes>and minutes>because minutes>opener more>because more>unit morning>verb
          my>other nearly>other need>other nice>opener ninety>number nose>and not>ing not>other not>verb
          now>because now>contraction number>number of>article of>pronoun of>verb off>pronoun oh>contraction
          on>number on>pronoun one>auxiliary one>manner one>part only>because only>other opposite>part other>number
          over>part own>part people>verb piece>number please>never please>pronoun pretend>contraction
          push>preposition real>other rest>number rest>preposition ribs>other ring>other roll>preposition
          rows>number same>number same>other second>other second>verb seconds>article seconds>preposition
          set>preposition shoulders>verb side>and side>other sides>verb skin>article slow>manner so>other soft>part
          sore>verb squat>other squat>verb squats>and squats>article squeeze>article stand>preposition stay>other
          steady>verb step>number step>preposition tall>and tea>other ten>unit that's>other that>auxiliary that>kit
          the>article the>ing the>kit the>number the>other the>part the>preposition them>auxiliary them>manner
          then>number then>verb there>and there>pronoun these>and they>never thighs>because this>opener those>verb
          three>unit through>other till>contraction to>number to>opener today>contraction toe>preposition
          toes>manner too>manner top>and top>part towel>other twenty>other two>manner um>other up>opener
          up>preposition very>opener walk>preposition wall>article wall>verb want>pronoun warm>preposition
          was>number water>because way>pronoun wee>other weight>preposition welcome>preposition what>contraction
          what>pronoun where>pronoun wherever>pronoun why>contraction with>part yes>contraction yet>verb you're>ing
          you>auxiliary you>manner you>verb your>opener your>part
        `,
      ],
      [
        -0.5,
        `
          a>verb and>and and>contraction and>other and>verb are>other arms>verb at>other away>preposition back>part
          breath>preposition change>part do>number down>manner easy>opener eight>article eighty>number feet>manner
          feet>part feet>verb fine>because floor>and for>number for>other forty>number four>other get>other
          go>opener goes>other got>other half>article hand>because heavy>verb heels>verb here>contraction hip>other
          hips>other is>other know>contraction lane>number last>number leg>contraction legs>because let>opener
          like>contraction lot>verb of>number of>other off>article other>part out>because plank>part right>part
          say>opener see>article see>because shoulder>part so>verb stand>because stop>and straight>part
          straight>preposition switch>part ten>manner the>opener the>verb there>because thigh>other three>and
          time>because to>auxiliary to>other two>part up>manner way>preposition we>verb week>number you>and
          your>other
        `,
      ],
      [-0.75, 'feels>opener good>other just>verb now>verb out>manner take>number to>verb'],
    ],
    'kind-before': [
      [0.75, 'day'],
      [0.5, 'compared er s'],
      [0.25, 'amount noun particle praise'],
      [-0.25, 'article be do does never preposition'],
      [-0.5, 'and because but contraction did have modal of or order owner to'],
      [-1, 'owned'],
    ],
    'kind-closing': [
      [1, 'pointer>adverb'],
      [
        0.75,
        `
          amount>s does>adverb hello>kit kit>adverb of>s owner>verb particle>particle particle>praise praise>other
        `,
      ],
      [
        0.5,
        `
          adjective>s adjective>subject adverb>noun adverb>other amount>noun and>adjective and>particle
          article>unit article>verb be>ed be>never be>s because>hello compared>number contraction>ing
          contraction>object contraction>other contraction>pointer did>adjective does>ed ed>subject have>subject
          hello>never ing>particle kit>then modal>do never>er never>ing noun>hello noun>order noun>then number>part
          object>adverb object>particle of>other of>pointer order>number order>subject other>day other>s
          owner>amount owner>noun part>adjective part>order particle>adverb praise>amount praise>noun
          preposition>noun preposition>object preposition>pointer preposition>praise preposition>s
          preposition>subject s>particle subject>compared subject>hello subject>praise to>adjective to>number
          to>part verb>adverb verb>noun verb>want
        `,
      ],
      [
        0.25,
        `
          adjective>part adjective>praise adverb>adjective adverb>amount adverb>compared amount>kit amount>number
          and>amount and>number article>does be>adjective be>subject be>to because>noun compared>kit
          compared>particle contraction>adjective contraction>ed contraction>praise day>subject did>pointer
          did>preposition do>number do>verb does>praise does>verb er>be er>because er>verb have>other have>to
          hello>adverb hello>amount hello>does hello>particle hello>person hello>subject hello>then ing>kit
          ing>number ing>other ing>subject ing>then kit>kit kit>particle kit>unit kit>verb never>adjective
          never>subject noun>amount noun>compared noun>subject number>do number>hello number>number number>particle
          object>other object>verb of>object or>because or>never order>unit other>adverb other>amount other>ed
          other>kit other>object other>unit owned>kit owner>does owner>kit owner>number owner>person owner>unit
          part>compared part>er part>ing part>particle particle>adjective particle>amount particle>be
          particle>compared particle>do particle>ing person>ed person>noun person>other pointer>number pointer>part
          preposition>other preposition>part s>hello s>order subject>ing subject>noun subject>particle subject>want
          then>kit then>verb to>subject unit>adjective unit>adverb verb>amount verb>kit
        `,
      ],
      [
        -0.25,
        `
          adjective>and adjective>article adjective>contraction adjective>ed adjective>never adjective>of
          adjective>order adjective>owned adjective>to adjective>verb adverb>adverb adverb>and adverb>article
          adverb>because adverb>do adverb>hello adverb>ing adverb>kit adverb>part adverb>s adverb>verb
          amount>because amount>compared amount>ing and>article and>hello and>preposition and>then article>compared
          article>contraction article>est article>number article>order article>particle be>noun be>preposition
          because>adjective because>adverb because>article because>be because>did because>owner because>person
          because>s because>verb compared>preposition compared>verb contraction>article contraction>be
          contraction>have contraction>owner contraction>unit contraction>want did>article did>object do>never
          do>preposition do>s does>article ed>noun ed>particle have>article hello>because hello>contraction
          hello>ing hello>number hello>order hello>praise hello>preposition ing>and ing>article ing>hello ing>part
          kit>amount kit>contraction kit>does kit>never kit>pointer kit>preposition modal>adverb modal>be
          modal>hello modal>preposition modal>verb never>adverb never>did never>preposition never>want noun>and
          noun>article noun>because noun>object noun>of noun>owner noun>part number>and number>be number>because
          number>does number>kit number>never number>of number>order number>other number>preposition number>s
          number>then number>to object>subject of>article of>noun of>owner or>verb order>particle order>verb
          other>and other>article other>because other>compared other>does other>hello other>noun other>number
          other>of other>order other>owned other>to owned>ing owned>other part>contraction part>kit part>modal
          part>number part>part part>pointer particle>and particle>article particle>because particle>contraction
          particle>ed particle>never particle>noun particle>of particle>person particle>preposition particle>to
          person>number pointer>be pointer>because pointer>does pointer>unit praise>and praise>particle
          preposition>amount preposition>and preposition>article preposition>contraction preposition>ing
          preposition>owner preposition>to s>noun s>preposition subject>and subject>article subject>contraction
          subject>do subject>never subject>to then>number then>s to>article to>hello to>owner to>particle
          to>preposition unit>and unit>be unit>ing unit>kit unit>of unit>other unit>subject verb>and verb>article
          verb>contraction verb>number verb>owner verb>pointer verb>praise verb>s verb>to
        `,
      ],
      [
        -0.5,
        `
          amount>of and>contraction and>subject article>adjective article>adverb article>owned article>subject
          be>adverb be>article be>because because>contraction because>subject contraction>adverb
          contraction>because contraction>did contraction>verb does>subject kit>and kit>because kit>part never>noun
          noun>be number>praise of>unit other>contraction owner>adjective owner>hello owner>order owner>other
          part>and part>because part>subject part>to particle>other particle>part particle>unit person>verb
          pointer>preposition praise>number preposition>adverb preposition>er subject>have subject>order to>other
          unit>because verb>because verb>object
        `,
      ],
      [-0.75, 'article>praise owner>owned'],
      [-1, 'article>ed'],
    ],
    'kind-around': [
      [
        0.75,
        `
          article>noun>article article>noun>number article>other>article other>noun>subject owner>other>subject
          preposition>part>verb preposition>subject>verb verb>preposition>adjective
        `,
      ],
      [
        0.5,
        `
          adjective>part>part adjective>part>s amount>number>number and>adjective>verb and>particle>verb
          and>verb>contraction article>adjective>article article>er>adverb article>kit>adjective
          article>kit>subject article>kit>unit article>noun>owner article>other>adjective article>other>because
          article>other>contraction article>other>number article>part>adverb article>part>article
          article>part>hello article>part>number article>part>preposition article>unit>noun article>unit>number
          article>verb>ing contraction>adjective>and contraction>subject>particle do>number>article
          hello>adjective>preposition hello>part>verb hello>subject>verb noun>adverb>subject noun>particle>number
          noun>verb>contraction number>number>part object>particle>subject of>pointer>subject
          order>subject>adjective order>unit>number other>never>verb other>number>and other>other>article
          other>other>subject other>preposition>verb other>subject>adjective other>subject>contraction
          owner>kit>and owner>part>contraction owner>part>number owner>particle>verb part>adjective>verb
          part>adverb>noun part>article>adjective part>does>verb part>particle>number part>particle>person
          part>preposition>verb part>verb>part part>verb>verb particle>adjective>contraction
          particle>adjective>part particle>particle>preposition pointer>subject>other preposition>number>adjective
          preposition>number>noun preposition>number>preposition preposition>part>part preposition>pointer>article
          preposition>pointer>hello preposition>subject>hello subject>adjective>and subject>amount>preposition
          subject>modal>number subject>other>noun subject>particle>subject subject>unit>article subject>verb>hello
          subject>verb>subject to>verb>contraction verb>hello>particle verb>object>and verb>particle>because
          verb>subject>number
        `,
      ],
      [
        0.25,
        `
          adjective>adjective>particle adjective>hello>subject adjective>kit>verb adjective>noun>be
          adjective>noun>preposition adjective>number>number adjective>other>verb adjective>part>be
          adjective>part>compared adjective>part>do adjective>particle>part adjective>preposition>noun
          adjective>preposition>verb adjective>subject>subject adjective>subject>verb adjective>verb>because
          adjective>verb>verb adverb>number>number adverb>particle>article adverb>preposition>article
          adverb>verb>owner amount>particle>subject and>adjective>contraction and>noun>verb and>number>number
          and>part>particle and>particle>and and>particle>number and>particle>part and>verb>adverb and>verb>because
          and>verb>number and>verb>pointer and>verb>verb article>adjective>compared article>adjective>ing
          article>adjective>never article>adjective>praise article>adjective>preposition article>adjective>verb
          article>article>part article>er>number article>ing>article article>ing>particle article>ing>subject
          article>ing>verb article>kit>article article>kit>hello article>kit>kit article>kit>never article>kit>part
          article>kit>to article>kit>verb article>noun>does article>noun>subject article>number>article
          article>number>other article>other>never article>other>owner article>other>part article>other>s
          article>other>subject article>owned>article article>part>adjective article>part>because article>part>kit
          article>part>then article>part>to article>particle>and article>person>verb article>s>because
          article>s>kit article>s>subject article>subject>part article>verb>noun article>verb>part
          article>verb>verb be>adjective>noun be>ing>article be>ing>contraction be>preposition>other
          compared>kit>because contraction>adjective>because contraction>article>hello contraction>do>verb
          contraction>ing>and contraction>ing>contraction contraction>ing>owner contraction>other>verb
          do>article>noun do>subject>verb do>verb>subject end>hello>subject end>hello>verb er>because>contraction
          have>other>preposition hello>subject>article hello>subject>noun hello>verb>adjective ing>adjective>verb
          ing>particle>number ing>preposition>contraction ing>preposition>preposition kit>adverb>because
          kit>adverb>particle kit>does>preposition kit>particle>never kit>subject>particle noun>article>verb
          noun>noun>noun noun>noun>preposition noun>of>kit noun>particle>and noun>particle>article
          noun>then>article noun>verb>article number>amount>adverb number>amount>and number>number>adverb
          number>number>amount number>number>preposition number>number>verb number>other>verb number>particle>and
          number>particle>verb number>unit>contraction number>unit>part number>unit>to number>unit>verb
          number>verb>article object>verb>particle of>number>then of>object>hello of>other>preposition
          of>pointer>other of>pointer>part order>number>and order>verb>preposition other>adverb>verb
          other>does>verb other>hello>verb other>kit>subject other>particle>and other>particle>part
          other>pointer>verb other>preposition>contraction other>s>subject other>subject>modal other>subject>other
          other>verb>number other>verb>preposition owned>adjective>subject owner>adjective>adjective
          owner>adjective>other owner>kit>part owner>kit>particle owner>other>contraction owner>part>kit
          owner>part>never owner>part>owner owner>part>then part>adjective>adverb part>adjective>amount
          part>adjective>subject part>adverb>because part>be>amount part>does>part part>hello>contraction
          part>noun>and part>noun>kit part>noun>number part>noun>part part>noun>verb part>other>because
          part>part>part part>particle>adverb part>particle>never part>particle>verb part>verb>subject
          particle>adverb>adjective particle>adverb>and particle>because>because particle>number>noun
          particle>particle>article particle>particle>contraction particle>praise>and
          particle>preposition>preposition particle>subject>adverb particle>subject>preposition particle>verb>part
          particle>verb>verb praise>other>contraction preposition>adjective>noun preposition>adverb>and
          preposition>kit>preposition preposition>noun>number preposition>number>verb
          preposition>object>preposition preposition>object>subject preposition>object>verb preposition>pointer>and
          preposition>pointer>verb preposition>preposition>because preposition>subject>article
          preposition>subject>noun subject>adverb>adjective subject>adverb>particle subject>article>verb
          subject>did>article subject>do>other subject>does>number subject>hello>contraction subject>hello>subject
          subject>noun>verb subject>part>number subject>part>to subject>particle>hello subject>particle>part
          subject>particle>verb subject>preposition>owner subject>preposition>preposition subject>preposition>s
          subject>subject>and subject>verb>other to>adjective>subject to>be>adjective to>verb>adjective
          to>verb>adverb to>verb>and to>verb>because to>verb>number unit>adverb>preposition
          unit>preposition>contraction verb>adjective>article verb>adjective>because verb>adjective>kit
          verb>adverb>contraction verb>amount>subject verb>noun>particle verb>noun>verb verb>number>number
          verb>other>verb verb>part>adjective verb>particle>adverb verb>particle>contraction verb>particle>particle
          verb>preposition>adverb verb>preposition>article verb>subject>amount verb>subject>never
          verb>subject>praise verb>subject>subject verb>verb>article want>subject>preposition
        `,
      ],
      [
        -0.25,
        `
          adjective>because>subject adjective>noun>and adjective>noun>because adjective>noun>contraction
          adjective>other>particle adjective>part>other adjective>part>to adjective>particle>article
          adjective>subject>preposition adjective>unit>and adjective>verb>adjective adjective>verb>number
          adjective>verb>part adverb>adjective>noun adverb>did>article adverb>preposition>number
          adverb>verb>because and>adverb>verb and>hello>contraction and>noun>article and>number>particle
          and>particle>adverb and>verb>adjective and>verb>noun and>verb>particle and>verb>preposition
          and>verb>subject article>adjective>contraction article>adjective>noun article>adjective>other
          article>adjective>subject article>compared>kit article>ed>kit article>er>kit article>hello>other
          article>kit>adverb article>kit>particle article>kit>pointer article>noun>adverb article>noun>kit
          article>noun>pointer article>noun>preposition article>number>number article>order>kit
          article>order>number article>other>be article>other>hello article>other>other article>part>and
          article>part>be article>part>s article>particle>part article>s>verb article>unit>article
          article>unit>because article>verb>contraction article>verb>number be>ing>particle be>number>number
          be>subject>adjective because>contraction>adjective because>owner>part because>subject>noun
          because>subject>other contraction>adjective>number contraction>adverb>adjective contraction>adverb>verb
          contraction>do>article contraction>do>number contraction>ing>number contraction>ing>particle
          contraction>other>subject do>never>verb do>subject>adjective do>subject>number hello>other>contraction
          ing>particle>verb ing>preposition>adjective ing>subject>part ing>subject>particle kit>adverb>verb
          kit>and>verb kit>particle>and kit>preposition>article kit>preposition>contraction never>ing>contraction
          never>other>article never>other>because never>verb>adjective never>verb>article never>verb>particle
          noun>adverb>article noun>adverb>because noun>number>because noun>number>part noun>particle>because
          noun>particle>noun noun>particle>preposition noun>preposition>article noun>subject>number
          noun>subject>particle number>kit>and number>noun>number number>number>because number>particle>number
          number>preposition>article number>unit>adverb number>unit>and object>particle>particle of>article>part
          of>kit>because of>number>article of>object>and of>owner>part of>subject>contraction other>noun>because
          other>object>particle other>particle>article other>particle>order other>particle>subject
          other>preposition>owner other>s>verb other>subject>number other>verb>article owned>adjective>verb
          owner>adjective>noun owner>adjective>part owner>est>noun owner>hello>part owner>noun>noun
          owner>other>noun owner>other>other owner>owned>verb owner>part>and owner>part>article owner>part>be
          owner>part>preposition owner>part>verb owner>s>because part>adjective>preposition part>adverb>adjective
          part>adverb>verb part>and>part part>and>verb part>be>adjective part>hello>verb part>ing>particle
          part>modal>verb part>noun>article part>noun>never part>noun>preposition part>other>adjective
          part>part>verb part>particle>and part>particle>contraction part>preposition>article part>to>part
          part>to>verb part>verb>adverb part>verb>article part>verb>particle part>verb>preposition
          particle>and>verb particle>noun>number particle>part>adjective particle>part>verb
          particle>preposition>article particle>preposition>contraction particle>preposition>subject
          particle>subject>contraction particle>verb>number pointer>noun>particle pointer>subject>verb
          preposition>adjective>other preposition>adjective>owned preposition>adverb>because
          preposition>article>adjective preposition>article>kit preposition>article>noun preposition>article>number
          preposition>article>order preposition>article>other preposition>article>part preposition>number>and
          preposition>number>part preposition>number>unit preposition>object>and preposition>object>because
          preposition>other>number preposition>owner>adjective preposition>owner>part preposition>part>adjective
          preposition>pointer>because preposition>pointer>subject preposition>subject>part
          preposition>subject>particle subject>adjective>subject subject>adverb>subject subject>be>number
          subject>does>adjective subject>does>contraction subject>modal>do subject>noun>and subject>noun>article
          subject>other>because subject>other>number subject>other>preposition subject>other>subject
          subject>part>particle subject>part>verb subject>particle>article subject>particle>particle
          subject>preposition>adjective subject>preposition>because subject>verb>number subject>verb>part
          subject>verb>pointer subject>verb>praise subject>verb>verb to>other>article to>other>subject
          to>verb>particle to>verb>preposition to>verb>verb unit>because>subject unit>particle>contraction
          unit>particle>preposition unit>particle>verb verb>adjective>part verb>adjective>preposition
          verb>adverb>preposition verb>article>kit verb>article>part verb>number>and verb>object>article
          verb>object>particle verb>other>because verb>other>part verb>owner>part verb>particle>and
          verb>particle>preposition verb>particle>then verb>particle>to verb>praise>and verb>preposition>because
          verb>preposition>other verb>preposition>particle verb>preposition>verb want>subject>compared
        `,
      ],
      [
        -0.5,
        `
          adjective>particle>because and>noun>number and>other>part and>part>verb and>particle>subject
          article>adjective>amount article>adjective>and article>adjective>kit article>kit>and article>kit>because
          article>kit>does article>noun>never article>noun>other article>noun>particle article>order>subject
          article>other>kit article>other>verb article>part>ing article>part>particle article>person>because
          be>other>verb because>adjective>because because>subject>verb contraction>other>article
          contraction>other>contraction number>number>number number>praise>and of>other>and of>subject>because
          order>unit>subject other>noun>number other>number>number other>particle>number owner>adjective>verb
          owner>other>part part>particle>preposition part>verb>because particle>subject>verb
          preposition>adjective>part preposition>adverb>contraction preposition>part>noun preposition>subject>and
          preposition>subject>because preposition>unit>number subject>modal>verb subject>never>verb then>verb>part
          to>verb>subject unit>because>contraction unit>particle>and verb>adverb>because verb>object>verb
          verb>subject>article
        `,
      ],
      [-0.75, 'article>adjective>part'],
    ],
    'word-kind': [
      [0.75, 'back>number behind>verb two>noun'],
      [
        0.5,
        `
          again>verb away>part back>adverb bar>other bell>verb bottom>because chest>part did>article do>verb
          done>other down>kit down>praise drop>particle eight>verb five>adjective five>preposition four>because
          go>part go>subject good>subject hands>verb hips>particle in>because in>part in>subject it>contraction
          it>other it>subject it>verb like>owner long>verb no>adjective no>verb not>subject off>adjective on>adverb
          on>contraction on>preposition one>particle one>praise other>contraction press>verb round>verb
          shoulders>preposition side>part side>preposition slowly>number straight>because tall>verb ten>because
          that>and that>number that>order then>part there>verb thing>because time>verb top>verb up>do up>verb
          width>and you>because you>part
        `,
      ],
      [
        0.25,
        `
          10>unit 3>number again>adjective all>other arch>adjective are>adverb are>particle are>verb arm>and
          arms>to away>because back>because back>verb bend>owner bent>verb between>because both>noun bottom>and
          breath>and breathe>and breathe>because breathing>verb bum>part chair>article chair>verb chest>particle
          curls>part down>article down>noun down>number each>verb eight>number elbows>part evening>subject feet>and
          fine>article fine>verb five>then five>verb fold>preposition forward>adjective four>and four>noun
          four>particle get>preposition go>article go>never goes>article goes>kit going>verb hamstrings>verb
          hand>article hands>particle hang>verb head>and heavy>number heavy>part hips>subject hold>because
          in>adjective in>noun in>number it>adjective it>amount it>and it>hello it>kit it>modal it>order it>part
          it>pointer it>then jump>preposition knees>particle left>and left>number leg>adverb leg>because leg>never
          leg>other level>verb lift>number lifts>number low>because me>article more>and more>hello more>verb
          neck>verb next>part no>part nose>preposition nose>verb not>number nothing>adjective off>and off>order
          off>part off>particle okay>because on>part on>verb once>subject one>adverb one>other one>preposition
          ones>adjective ones>number other>verb out>noun out>to pair>article pair>noun please>article press>part
          press>preposition raises>verb reach>article rest>adjective rest>noun right>verb rings>because rounds>and
          rounds>because seconds>number seconds>verb set>article set>number sets>contraction shoulder>contraction
          shoulder>verb sit>because six>and slow>part squats>noun stand>contraction step>article still>verb
          stop>because swap>noun ten>and ten>number that>contraction that>hello that>owned that>verb them>article
          them>because them>preposition then>kit then>preposition there>number there>other there>part thighs>verb
          this>adverb those>subject three>article three>s three>subject time>and time>noun time>number times>verb
          to>because toe>adjective toes>preposition together>subject touches>owner twelve>and two>particle
          up>article up>hello up>number up>part up>particle up>then ups>part way>number week>and well>contraction
          wide>part you>number
        `,
      ],
      [
        -0.25,
        `
          5>and a>amount a>kit a>noun a>number a>other a>part a>praise all>article all>subject and>adjective
          and>article and>hello and>kit and>never and>noun and>number and>other and>part and>particle and>subject
          arm>particle arm>verb arms>and arms>number arms>particle as>adjective as>hello as>subject at>article
          at>number away>and away>verb back>particle back>preposition back>s before>subject behind>subject
          belly>verb bent>part big>part blow>particle both>part breath>particle breathe>particle bus>never can>verb
          chair>adverb chair>part chest>noun chin>part come>particle curls>and dead>adverb do>number doesn't>verb
          doing>number don't>verb down>hello down>preposition eight>article elbows>noun even>because eyes>adjective
          far>because feet>noun feet>particle five>contraction five>unit floor>adverb floor>noun floor>number
          floor>preposition foot>number forty>number forward>and forward>preposition fours>verb get>number
          go>adjective go>particle go>preposition goes>adjective good>noun good>other good>part hand>preposition
          hands>adjective hands>and hands>preposition heels>particle height>part help>subject here>number hip>noun
          hip>other hips>other hips>part hips>verb hold>article hold>number hold>subject hot>other hundred>and
          i>never i>verb if>contraction if>subject in>article in>verb is>adjective is>article is>number is>praise
          it>adverb it>does it>er it>particle keep>noun knee>adjective knee>adverb knee>contraction knees>because
          knees>kit knees>never knees>to know>because know>contraction last>amount last>number last>subject
          left>verb leg>number leg>subject legs>because legs>particle let>subject lift>subject like>article
          like>subject line>preposition lovely>praise make>adjective mat>contraction me>because middle>and
          middle>contraction minute>number minute>verb minutes>amount minutes>and minutes>because more>because
          more>unit morning>verb nice>adjective not>ing not>preposition now>article now>because now>verb of>article
          of>other of>pointer of>subject off>hello off>subject oh>contraction on>adjective on>owner one>adjective
          one>part one>then one>unit ones>other only>because opposite>part or>verb out>because out>of
          out>preposition over>part own>part please>never please>subject press>particle pretend>contraction
          push>particle rest>because rest>verb ribs>verb ring>noun rings>verb row>number rows>number rows>verb
          same>number say>subject second>part seconds>particle see>contraction see>owner shoulders>verb side>ing
          side>then skin>article so>verb soft>part sore>verb stand>particle stay>adjective stays>adjective
          steady>verb step>subject step>verb straight>and support>noun sure>subject tea>other ten>unit
          that>adjective that>kit that>other that>subject the>adjective the>article the>ing the>kit the>noun
          the>number the>other the>owned the>part the>s the>verb then>noun then>number then>verb there>subject
          these>and they>never three>and three>unit till>contraction time>order times>preposition to>do to>hello
          to>number to>other toes>verb top>other top>part two>adjective two>and two>unit two>verb up>because
          up>owner up>praise up>preposition up>to very>praise wall>verb warm>particle was>number water>because
          way>preposition week>contraction week>subject what>contraction what>subject where>subject
          wherever>subject why>contraction with>adjective with>part yes>contraction you>article you>did you>modal
          you>order you>other your>adjective your>kit your>other your>owned your>part
        `,
      ],
      [
        -0.5,
        `
          a>adjective a>verb and>contraction and>then and>verb away>preposition back>noun back>part change>part
          down>adjective eighty>number feet>adjective fine>because for>number forward>verb half>article
          hand>because hand>subject head>verb heavy>verb heels>verb here>contraction it>compared leg>contraction
          let>verb long>noun now>noun of>number off>article other>part out>adjective people>verb plank>part
          right>part see>because shoulder>part side>adverb stand>because stop>and straight>part straight>particle
          switch>part take>number the>order there>because time>because too>adjective two>part up>order want>subject
          way>particle we>verb week>number you>and you>verb
        `,
      ],
      [-0.75, 'just>verb like>contraction to>verb'],
    ],
    ahead: [
      [1, "and>six and>that's in>as out>as out>on thirty>seconds"],
      [
        0.75,
        `
          and>go and>off and>park and>swap and>switch and>the and>when back>knee back>to blow>out breath>in come>on
          do>not five>four flat>back half>a have>a here>we if>a in>through it>is keep>hold now>the off>you on>your
          one>hand one>two over>to round>two see>you set>the shake>your slow>on so>this thank>you up>for
        `,
      ],
      [
        0.5,
        `
          a>foot a>march a>minute a>whole across>the and>again and>done and>one and>rest and>walk and>we're arms>up
          back>against back>foot back>of big>breath both>feet both>knees breath>out breathe>out crease>of
          cushion>under do>them don't>arch don't>lean don't>tip down>now eight>and eight>each elbow>under eyes>up
          find>a five>if for>anybody for>my four>five front>knee go>on half>way hang>on here's>the hold>for
          i've>been i>did i>had if>anything if>it if>it's if>you if>you've if>your in>for in>on is>that it's>like
          it's>the just>lift keep>it knees>down lean>your leave>the legs>long lift>one look>at next>up nine>ten
          no>swinging off>and off>last only>as or>just other>side out>two press>it pull>it pull>your push>through
          put>them ribs>down same>again seven>eight shoulders>down side>on slow>slow some>of somebody>asked
          stand>tall stay>as stay>for step>back step>one take>one that's>it that's>one the>next the>plan then>you
          there>and there>we these>are three>seconds to>finish to>make top>leg tuck>the up>and up>like up>onto
          walk>it want>more we'll>do we're>not we>begin while>you're whole>foot you>know you>only you>should
          you>will
        `,
      ],
      [
        0.25,
        `
          30>seconds 3>rounds 8>and 9>10 a>belt a>calf a>long a>rolled a>shoulder a>skip about>forty above>the
          add>a again>if all>fours and>3 and>breathe and>change and>don't and>down and>feel and>keep and>now
          and>over and>roll and>rows and>shake and>ten and>twenty and>we as>high as>many ask>me back>flat ball>of
          before>we belly>button both>hands bottom>knee breathe>and breathe>don't breathe>in breathe>into bring>the
          can't>get can>you carry>on chest>proud chest>up clear>the coming>back do>ten do>your don't>force
          don't>let don't>yank down>slow down>two dumbbell>in elbows>are elbows>under empty>bar every>minute
          face>the feel>it feel>your feet>a feet>hip fingertips>on fists>or five>and five>breaths five>each
          five>times floor>press for>those forearms>on four>times from>here from>there front>edge go>down go>home
          go>to good>good got>a got>it hands>down hate>it heel>and heel>slides hinge>forward hips>don't hips>stay
          hold>it hold>the i'd>like i'll>show i've>got i>do i>like i>once i>used i>won't if>the in>here in>to
          in>two in>you instead>of it>comes it>wants keep>breathing knees>bent lamp>post last>thing leg>out
          leg>swings let>me let>us lift>your light>on like>you long>neck long>step lovely>and low>back lower>the
          make>sure mini>squats my>phone my>sister near>hand no>burpees nose>over not>doing oh>that's one>arm
          one>down onto>the other>arm out>breath outside>leg palms>facing people>call press>through push>off
          push>up quiet>feet ring>rows rings>at roll>over second>go seven>and shake>out sharp>pain shoulder>blades
          side>plank single>leg sip>of sit>tall sit>your six>to skin>the slide>the slow>as small>and so>it's
          so>that's soft>knees some>people squat>jumps squeeze>it stand>up stay>there straight>leg straight>line
          straighten>one sure>the swap>over swing>the take>a ten>more ten>to that's>the that's>us that's>your
          that>back that>is the>bench the>bend the>best the>clean the>ear the>heel the>long the>lower the>number
          the>pair the>rest the>row the>third then>a then>sit then>straight then>your there>was think>about
          think>of thirty>metres this>is this>one's three>sets through>both to>end turn>your twelve>and twenty>to
          two>minutes two>rounds two>seconds two>sets until>you're up>quick up>you watch>the we'll>go we'll>have
          we>were weight>in weight>over well>done when>i when>the you'll>feel you'll>want you're>a you're>leaning
          you're>looking you've>got you>don't you>might your>arms your>bum your>heel your>neck your>shoulders
        `,
      ],
      [
        -0.25,
        `
          a>side a>week after>each and>bring and>close and>draw and>drive and>four and>he and>i'm and>it and>look
          and>stay and>two and>you arms>and as>it as>the as>you as>your at>the away>from back>and back>down back>up
          bar>on bring>your by>the close>to don't>jump down>if down>one down>there drop>the each>leg every>time
          first>two five>minutes five>seconds foot>up for>two forty>five front>squats go>and go>back go>out hand>on
          hand>over hands>over head>on heels>a here>is hike>it hip>width i>said i>say i>thought if>you're in>a
          in>between in>front is>a isn't>it it's>on it>doesn't it>down just>under knee>down knees>under lean>back
          leg>and legs>out lets>you level>with lift>the long>line next>to ninety>seconds no>rest no>shame no>weight
          now>i now>this of>it of>the of>your off>it on>a on>each on>it on>to one>and one>if one>is one>knee
          one>leg one>side one>the or>your out>to over>your quick>feet right>into roll>out round>the side>to sit>to
          six>and slide>down slide>up slow>breaths slow>don't snap>the so>be so>it so>the so>you're sort>of
          stand>and stay>down stay>on straight>up swap>at take>your tell>me ten>minutes ten>seconds that's>fine
          that's>how that's>where the>floor the>hips the>knees the>last the>same the>shoulder the>wall the>way
          them>on then>let then>swap then>switch there's>no this>morning three>and till>the to>go to>the to>your
          touch>the twice>a twice>as two>one two>three up>first up>then up>there we'll>leave we>will weight>on
          when>you're with>a with>the you're>not you're>on you've>a you've>done you've>gone you>are you>come
          you>get you>had your>breath your>feet
        `,
      ],
      [
        -0.5,
        `
          3>times a>day and>do and>hold and>i and>i'll and>i've and>it's and>just and>not and>take and>twelve as>a
          as>well bring>a come>back each>side find>the five>more go>one i>want in>the keep>them legs>up let>you
          make>a mind>the no>higher now>and off>the push>ups put>your right>down roll>back same>thing so>your
          split>squats that's>been the>other the>whole three>times three>to turn>the two>and we're>on we>do we>go
          when>you've with>your you>could
        `,
      ],
      [-0.75, 'and>a out>of'],
    ],
    'kind-behind': [
      [1, 'because>subject>preposition'],
      [
        0.75,
        `
          adverb>article>other and>contraction>subject and>owner>part article>adjective>subject because>subject>be
          contraction>owner>amount contraction>subject>preposition ing>preposition>object never>article>other
          number>article>adjective number>of>pointer of>article>other or>verb>particle order>unit>number
          other>owner>part part>pointer>noun particle>part>adjective particle>particle>particle
          particle>subject>verb praise>noun>subject preposition>owner>other preposition>owner>part subject>want>to
          unit>of>number verb>object>particle
        `,
      ],
      [
        0.5,
        `
          adjective>and>hello adjective>number>number adjective>part>adjective adjective>part>ed
          adjective>verb>preposition adverb>article>noun amount>of>s amount>preposition>subject and>number>particle
          and>other>subject and>particle>adjective article>adjective>part article>noun>particle
          article>order>number article>other>noun article>other>verb article>verb>other be>article>number
          be>article>other be>preposition>subject because>contraction>adjective because>contraction>never
          because>other>subject because>subject>adjective because>subject>noun because>subject>other
          contraction>adverb>adjective contraction>ing>preposition contraction>owner>number did>adverb>other
          did>subject>article do>preposition>number end>hello>article end>hello>other have>article>verb
          hello>article>noun ing>contraction>ing ing>preposition>other ing>preposition>subject ing>verb>subject
          kit>and>particle kit>article>other kit>modal>do kit>number>number modal>hello>subject modal>verb>adverb
          never>article>verb never>other>preposition noun>part>particle number>adjective>noun number>and>number
          number>number>subject number>subject>verb number>to>verb of>article>kit other>article>other
          other>particle>order other>particle>subject other>preposition>noun other>subject>verb owner>part>particle
          part>adverb>adverb part>adverb>verb part>be>adjective part>do>subject part>ing>preposition
          part>never>other part>part>adjective part>part>part part>preposition>part part>to>part
          particle>article>kit particle>article>part particle>article>verb particle>kit>particle
          particle>never>other particle>of>subject particle>order>subject particle>part>particle
          particle>preposition>number particle>preposition>preposition particle>preposition>subject
          particle>subject>modal person>preposition>subject pointer>part>particle pointer>subject>other
          preposition>article>does preposition>article>er preposition>article>number preposition>article>part
          preposition>number>unit preposition>other>part preposition>owner>kit preposition>owner>person
          preposition>owner>verb preposition>pointer>part preposition>pointer>subject subject>adjective>part
          subject>did>object subject>does>preposition subject>have>to subject>hello>adjective
          subject>particle>particle subject>verb>object then>article>adjective then>verb>part then>verb>verb
          to>article>kit to>article>part to>owner>part to>verb>preposition unit>contraction>article
          unit>preposition>preposition verb>subject>because verb>subject>number verb>subject>other verb>to>number
          verb>verb>verb
        `,
      ],
      [
        0.25,
        `
          adjective>adjective>adjective adjective>adjective>subject adjective>adverb>subject adjective>and>noun
          adjective>and>other adjective>article>ing adjective>noun>number adjective>of>subject adjective>part>noun
          adjective>preposition>noun adjective>subject>verb adjective>then>verb adjective>to>adjective
          adverb>adjective>part adverb>part>adjective adverb>particle>particle adverb>preposition>subject
          adverb>subject>other amount>article>unit amount>of>kit amount>subject>modal amount>subject>verb
          amount>verb>particle and>adverb>number and>adverb>verb and>article>person and>contraction>number
          and>never>subject and>never>verb and>number>verb and>particle>adverb and>particle>number
          and>particle>particle and>particle>praise and>verb>noun and>verb>verb article>adjective>because
          article>adjective>kit article>adjective>other article>adjective>unit article>adverb>amount
          article>amount>subject article>compared>kit article>does>verb article>er>because article>ing>kit
          article>ing>other article>kit>kit article>kit>particle article>kit>then article>noun>article
          article>noun>does article>noun>never article>number>number article>order>kit article>other>be
          article>other>ing article>other>kit article>other>modal article>other>never article>part>article
          article>part>be article>part>compared article>part>particle article>part>preposition
          article>particle>part article>person>other article>praise>part article>preposition>subject
          article>unit>adjective be>article>noun be>number>number because>contraction>ing because>contraction>other
          because>number>unit because>subject>did because>subject>does because>subject>modal
          compared>preposition>number contraction>adjective>particle contraction>adverb>amount
          contraction>article>article contraction>article>part contraction>article>subject
          contraction>did>preposition contraction>ed>preposition contraction>ing>subject
          contraction>particle>preposition contraction>preposition>subject did>article>other do>article>article
          do>article>part do>pointer>adverb do>pointer>subject do>preposition>pointer does>part>adjective
          does>particle>verb ed>preposition>other end>hello>person hello>article>adjective hello>article>amount
          hello>preposition>number hello>verb>particle hello>verb>preposition ing>article>er ing>article>part
          ing>number>number ing>owner>part ing>owner>person ing>preposition>number ing>to>verb kit>article>ing
          kit>never>verb modal>other>subject modal>verb>subject never>adjective>particle never>article>noun
          never>article>part never>ing>particle never>ing>preposition never>noun>subject never>preposition>article
          never>verb>subject never>want>subject noun>adjective>noun noun>and>verb noun>number>number
          noun>number>unit noun>particle>verb noun>subject>subject number>amount>preposition number>and>noun
          number>and>verb number>article>part number>contraction>ing number>number>particle number>of>object
          number>other>other number>part>adverb number>subject>amount number>subject>noun number>unit>preposition
          number>unit>verb of>article>part of>article>particle of>article>unit of>owner>part order>number>unit
          order>subject>particle other>adjective>unit other>article>part other>kit>subject other>number>noun
          other>number>number other>particle>because other>preposition>because other>subject>particle
          other>verb>ing owned>adverb>adjective owner>kit>particle owner>other>because owner>other>unit
          owner>other>verb owner>part>compared owner>part>hello part>adjective>adverb part>adjective>unit
          part>and>noun part>article>kit part>because>hello part>does>adjective part>hello>particle part>noun>of
          part>part>noun part>particle>subject part>preposition>ing part>subject>part part>then>verb
          part>verb>other part>verb>particle particle>adjective>part particle>adverb>preposition
          particle>article>ing particle>article>s particle>because>article particle>contraction>number
          particle>ing>particle particle>never>preposition particle>number>number particle>number>unit
          particle>other>subject particle>owner>part particle>preposition>ing particle>preposition>pointer
          particle>subject>particle particle>to>adjective particle>verb>adjective particle>verb>subject
          pointer>be>number pointer>number>unit pointer>other>preposition praise>and>adjective
          preposition>adjective>other preposition>article>kit preposition>article>owned preposition>article>person
          preposition>article>verb preposition>contraction>adverb preposition>contraction>other
          preposition>contraction>verb preposition>number>article preposition>number>part preposition>other>other
          preposition>owner>unit preposition>subject>hello s>and>s s>be>preposition s>number>unit
          s>part>preposition subject>amount>unit subject>and>then subject>article>noun subject>did>preposition
          subject>do>number subject>does>number subject>does>particle subject>other>number subject>particle>adverb
          subject>particle>to subject>preposition>pointer subject>preposition>s subject>to>other
          subject>unit>particle subject>verb>adverb subject>verb>particle subject>want>pointer then>noun>subject
          to>article>other to>other>adjective to>other>preposition to>other>subject to>owner>adjective
          to>owner>particle to>owner>s to>verb>number unit>article>part unit>preposition>article
          unit>preposition>other unit>preposition>pointer verb>adjective>adjective verb>adjective>noun
          verb>and>verb verb>article>amount verb>contraction>ing verb>number>unit verb>object>adjective
          verb>part>verb verb>particle>adverb verb>particle>compared verb>preposition>ing verb>preposition>number
          verb>preposition>object verb>preposition>particle verb>preposition>verb verb>preposition>want
          verb>subject>adjective verb>subject>adverb verb>subject>be verb>subject>compared verb>subject>er
          verb>subject>ing verb>subject>noun verb>subject>particle verb>verb>adjective want>article>other
          want>subject>compared
        `,
      ],
      [
        -0.25,
        `
          adjective>article>kit adjective>article>other adjective>because>contraction adjective>because>subject
          adjective>ing>particle adjective>kit>particle adjective>noun>verb adjective>other>noun
          adjective>preposition>article adjective>preposition>subject adjective>subject>hello
          adjective>subject>other adjective>subject>preposition adverb>owner>part adverb>preposition>article
          amount>of>object and>adjective>part and>adjective>particle and>article>adjective and>article>other
          and>article>part and>contraction>adverb and>contraction>did and>do>subject and>number>kit and>number>unit
          and>other>noun and>particle>s and>particle>verb and>preposition>number and>subject>adverb and>subject>did
          and>verb>adjective and>verb>article article>adjective>adverb article>amount>of article>article>other
          article>ed>noun article>ing>part article>ing>verb article>kit>amount article>kit>and article>kit>because
          article>kit>does article>kit>number article>kit>part article>kit>preposition article>kit>s
          article>noun>adjective article>noun>because article>noun>of article>noun>subject
          article>order>preposition article>other>adverb article>other>and article>other>because
          article>other>order article>other>particle article>other>pointer article>other>praise
          article>other>preposition article>owned>ing article>part>adjective article>part>and article>part>part
          article>particle>subject article>praise>other article>s>verb article>unit>number article>verb>ing
          article>verb>particle be>adjective>number be>adverb>adjective be>article>adjective be>article>amount
          be>article>verb be>ing>preposition be>number>unit be>owner>other because>article>adjective
          because>article>kit because>article>noun because>article>owned because>contraction>subject
          because>contraction>verb because>owner>other because>owner>owned because>subject>do because>verb>subject
          compared>preposition>subject contraction>article>adverb contraction>article>hello
          contraction>article>person contraction>be>ing contraction>number>number contraction>owner>adjective
          did>article>kit did>number>unit do>article>adjective do>subject>adjective do>subject>preposition
          does>verb>particle end>praise>hello have>article>other have>article>person hello>article>other
          hello>part>particle hello>part>preposition hello>verb>subject ing>article>ing ing>contraction>article
          kit>and>verb kit>part>adverb kit>preposition>article kit>subject>particle modal>do>number
          modal>verb>object modal>verb>particle never>other>particle never>verb>preposition never>verb>verb
          never>want>to noun>adjective>part noun>and>number noun>article>adjective noun>article>kit
          noun>article>part noun>hello>other noun>noun>particle noun>of>kit noun>of>other noun>of>subject
          noun>part>adjective noun>part>noun noun>particle>other noun>preposition>article noun>preposition>number
          noun>preposition>pointer noun>subject>particle noun>subject>verb noun>then>noun number>adjective>amount
          number>adjective>unit number>number>unit number>of>unit number>part>particle number>preposition>other
          number>unit>adjective number>unit>and number>unit>because number>unit>of object>verb>particle
          of>article>adjective of>object>particle of>owner>adjective of>pointer>other or>article>kit or>be>subject
          order>article>other other>and>noun other>do>verb other>of>noun other>other>subject other>part>particle
          other>preposition>article other>preposition>object other>subject>does other>unit>particle
          owner>number>unit owner>part>and owner>part>be owner>part>does owner>part>noun owner>part>part
          owner>part>subject part>adjective>subject part>and>verb part>article>other part>article>part
          part>article>verb part>be>adverb part>because>adjective part>because>subject part>never>verb
          part>noun>verb part>part>ed part>particle>part part>particle>person part>particle>preposition
          part>preposition>number part>preposition>other part>preposition>owner part>verb>adverb part>verb>verb
          particle>adjective>kit particle>adjective>subject particle>and>particle particle>article>other
          particle>because>hello particle>of>number particle>part>does particle>preposition>article
          particle>preposition>object particle>preposition>owner particle>to>article particle>to>number
          particle>verb>object pointer>be>adjective pointer>be>because praise>number>number preposition>article>est
          preposition>article>noun preposition>article>particle preposition>article>praise
          preposition>article>preposition preposition>article>subject preposition>because>subject
          preposition>contraction>adjective preposition>kit>noun preposition>number>noun preposition>number>s
          preposition>object>other preposition>owner>est preposition>owner>hello preposition>owner>order
          preposition>pointer>preposition s>number>number s>part>particle subject>adjective>other
          subject>adverb>verb subject>and>noun subject>and>other subject>and>verb subject>article>subject
          subject>because>subject subject>modal>adverb subject>modal>do subject>modal>preposition
          subject>modal>verb subject>never>want subject>noun>number subject>noun>subject subject>number>unit
          subject>other>particle subject>part>ing subject>particle>number subject>particle>verb
          subject>preposition>article subject>preposition>number subject>preposition>other subject>verb>hello
          subject>verb>number then>noun>particle then>verb>subject to>article>number to>number>number to>part>noun
          unit>and>number unit>article>unit unit>subject>did verb>article>compared verb>article>part
          verb>because>subject verb>other>particle verb>owner>kit verb>owner>particle verb>part>adjective
          verb>particle>preposition verb>particle>to verb>pointer>part verb>preposition>adjective
          verb>preposition>article verb>preposition>because verb>preposition>noun verb>preposition>preposition
          verb>preposition>subject verb>subject>article verb>subject>subject verb>to>verb want>to>noun
          want>to>other want>to>verb
        `,
      ],
      [
        -0.5,
        `
          amount>preposition>pointer and>subject>modal and>subject>other and>verb>subject
          article>adjective>adjective article>adverb>adjective article>order>amount article>other>s
          article>part>verb be>article>kit because>article>other because>owner>particle
          contraction>article>adjective contraction>verb>preposition contraction>verb>subject kit>kit>noun
          noun>article>noun noun>article>other noun>owner>part noun>particle>subject noun>verb>particle
          number>number>verb number>unit>number number>unit>other other>verb>number owner>adjective>particle
          owner>hello>part owner>other>kit owner>other>noun owner>part>adjective part>other>number
          part>preposition>subject particle>because>subject preposition>article>hello preposition>contraction>ing
          preposition>number>number subject>be>adverb subject>did>subject subject>never>other subject>other>object
          subject>verb>praise then>article>noun then>subject>verb unit>preposition>subject verb>article>adjective
          verb>article>kit verb>article>s verb>owner>other verb>owner>part verb>owner>s verb>pointer>noun
          verb>preposition>other verb>to>other
        `,
      ],
      [-0.75, 'and>subject>verb because>owner>part'],
      [-1, 'because>article>part'],
    ],
    'kind-word': [
      [0.75, 'adjective>a amount>if noun>if number>4 particle>back preposition>i'],
      [
        0.5,
        `
          adjective>count adjective>i adjective>if adjective>it's adjective>out adjective>take adjective>the
          adverb>you amount>then compared>and did>one ed>down hello>i kit>before kit>breathe never>if noun>back
          noun>same noun>tonight noun>walk number>other number>six number>so number>then number>there's
          number>twenty object>for object>if other>3 other>after other>bring other>drop other>elbows other>i'm
          other>leg other>let other>like other>push other>stay part>for part>knees part>sit part>tall part>the
          part>then part>your particle>breathe particle>done particle>hands particle>only particle>that praise>rest
          preposition>hold preposition>no preposition>when s>that's subject>about subject>good subject>my
          subject>on subject>once subject>right subject>two subject>you're unit>slow verb>don't verb>i verb>if
          verb>just verb>no verb>ten
        `,
      ],
      [
        0.25,
        `
          adjective>breathe adjective>come adjective>do adjective>five adjective>keep adjective>let
          adjective>minute adjective>my adjective>off adjective>press adjective>rest adjective>shoulders
          adjective>straps adjective>ten adjective>think adjective>through adjective>turn adjective>you're
          adjective>your adverb>about adverb>above adverb>before adverb>first adverb>have adverb>it adverb>now
          adverb>the adverb>when adverb>your amount>more amount>no amount>now amount>the article>and
          article>hamstrings article>morning article>pins article>slow article>that's be>no be>one because>go
          because>he because>stop because>you'd did>no does>if does>over er>and hello>one hello>sit ing>don't
          kit>back kit>five kit>in kit>it's kit>let kit>on kit>only kit>side kit>straight kit>we never>got
          noun>down noun>from noun>go noun>heel noun>heels noun>hold noun>in noun>lean noun>not noun>one
          noun>that's number>3 number>a number>down number>go number>have number>last number>nice number>rest
          number>seven number>ten number>the object>you other>and other>anyway other>back other>both other>breath
          other>do other>feel other>from other>go other>good other>hold other>it's other>just other>knees
          other>little other>no other>you've owned>the part>big part>chest part>four part>good part>hands part>have
          part>hips part>it part>okay part>pain part>press part>reach part>same part>squeeze part>stop part>ten
          part>three part>till part>too part>twenty particle>do particle>eight particle>fifteen particle>hold
          particle>i particle>it's particle>just particle>legs particle>lovely particle>no particle>pull
          particle>same particle>sit particle>stop particle>ten particle>then particle>there's particle>twenty
          particle>you person>if person>is person>you pointer>and pointer>at pointer>if pointer>it's pointer>the
          pointer>you praise>nice praise>that's preposition>30 preposition>chest preposition>don't
          preposition>eight preposition>for preposition>going preposition>i'm preposition>if preposition>it's
          preposition>on preposition>then preposition>there preposition>thirty preposition>toes preposition>what
          s>down s>feet s>hands s>rings s>your subject>can't subject>five subject>heel subject>it's subject>just
          subject>knees subject>let subject>one subject>only subject>rest subject>six subject>so subject>stand
          then>sit unit>a unit>between unit>go unit>good unit>if unit>only unit>step unit>the unit>two unit>your
          verb>before verb>four verb>halfway verb>have verb>hips verb>is verb>long verb>my verb>push verb>second
          verb>short verb>stay verb>step verb>that's verb>then verb>twice verb>we verb>you're want>you
        `,
      ],
      [
        -0.25,
        `
          adjective>arm adjective>bar adjective>bring adjective>foot adjective>hand adjective>hang adjective>knee
          adjective>land adjective>legs adjective>make adjective>now adjective>of adjective>sand adjective>sit
          adjective>slow adjective>toes adjective>with adverb>hold adverb>if adverb>it's adverb>so adverb>turn
          adverb>we amount>as amount>is amount>of amount>your and>i article>floor article>good article>leg
          article>other article>second article>side be>a be>done because>it's because>the because>there's
          because>well because>you because>you're because>you've because>your compared>feet compared>than
          contraction>go contraction>not contraction>take did>a did>the do>take do>this does>i does>next does>the
          does>up ed>the hello>bring hello>don't hello>the hello>then ing>a ing>on ing>your kit>and kit>down
          kit>for kit>from kit>instead kit>next kit>off kit>or kit>please kit>press kit>sit kit>stand kit>that
          kit>two kit>up modal>do modal>keep modal>let modal>reach modal>see never>a never>and never>let noun>and
          noun>come noun>eight noun>for noun>four noun>i'm noun>just noun>now noun>of noun>push noun>stop noun>then
          noun>they noun>ups noun>you number>each number>feet number>five number>good number>hundred number>k
          number>metres number>minutes number>more number>of number>off number>one number>seconds number>sets
          number>times number>to object>one of>the of>you order>one other>every other>first other>has other>he's
          other>in other>it other>lift other>mind other>post other>press other>shoulder other>stand other>tall
          other>to other>tonight other>turn other>we other>when owned>not owner>shoulders part>are part>button
          part>don't part>first part>five part>flat part>float part>goes part>height part>is part>let part>on
          part>open part>out part>point part>raise part>right part>roll part>soft part>straight part>that part>when
          part>wide particle>a particle>again particle>and particle>as particle>away particle>before particle>chest
          particle>elbows particle>first particle>for particle>four particle>hips particle>is particle>of
          particle>onto particle>push particle>slowly particle>straight particle>swing particle>tall particle>the
          particle>there particle>till particle>to particle>until particle>you're particle>you've particle>your
          person>and person>who pointer>before pointer>morning praise>good praise>leg praise>lovely praise>morning
          praise>stuff praise>work preposition>as preposition>between preposition>front preposition>hand
          preposition>heel preposition>here preposition>one preposition>side preposition>that preposition>the
          preposition>this preposition>three preposition>to preposition>twenty preposition>two preposition>you're
          preposition>your s>don't s>go s>next s>stay s>the subject>all subject>as subject>at subject>because
          subject>bend subject>else subject>feet subject>foot subject>for subject>go subject>hand subject>have
          subject>knee subject>know subject>leg subject>more subject>open subject>see subject>there subject>till
          subject>we to>do unit>each unit>four unit>here unit>left unit>of unit>or unit>out unit>take unit>there
          unit>you're verb>all verb>and verb>back verb>backwards verb>feet verb>forward verb>go verb>hands
          verb>home verb>legs verb>lower verb>of verb>opposite verb>out verb>right verb>so verb>the verb>them
          verb>to verb>when verb>your want>it want>to
        `,
      ],
      [
        -0.5,
        `
          adjective>as adjective>back adjective>drive adjective>leg adjective>side adverb>a adverb>breathe
          amount>three and>then article>right because>i do>not hello>it's hello>you ing>it kit>so kit>tuck
          noun>first noun>that number>nine number>slow number>two other>a other>there's part>and part>blades
          part>elbows part>find part>stay particle>squeeze particle>two preposition>it preposition>you subject>keep
          subject>make subject>out unit>that's verb>it
        `,
      ],
      [-0.75, 'adjective>one'],
    ],
    first: [
      [0.75, 'kit>verb unit>because'],
      [
        0.5,
        `
          auxiliary>auxiliary auxiliary>because contraction>part ing>verb kit>pronoun manner>and manner>number
          never>and never>because number>contraction number>manner number>never number>verb part>contraction
          part>verb preposition>because
        `,
      ],
      [
        0.25,
        `
          and>and auxiliary>contraction contraction>never ing>article ing>number ing>part kit>contraction
          ly>article ly>other ly>verb manner>auxiliary manner>contraction manner>ing manner>never manner>opener
          manner>verb never>number never>opener never>unit number>ly number>pronoun opener>contraction opener>part
          other>opener part>number part>unit preposition>ing preposition>never preposition>opener preposition>part
          pronoun>because unit>and unit>pronoun unit>verb verb>never verb>number verb>unit
        `,
      ],
      [
        -0.25,
        `
          and>because and>ing and>ly and>verb article>and article>because article>kit article>opener article>other
          article>unit auxiliary>and auxiliary>other auxiliary>part because>auxiliary because>manner because>other
          because>preposition because>pronoun contraction>article contraction>auxiliary contraction>ing
          contraction>number contraction>other contraction>pronoun contraction>unit ing>auxiliary ing>opener
          ing>preposition kit>other kit>preposition manner>article manner>part manner>unit never>article
          never>manner never>verb number>auxiliary number>unit opener>and opener>article opener>because other>ing
          other>manner other>never part>article part>other part>preposition part>pronoun preposition>auxiliary
          preposition>other preposition>preposition preposition>verb pronoun>and pronoun>auxiliary pronoun>ing
          pronoun>preposition unit>opener verb>and verb>auxiliary verb>because verb>ing verb>part verb>preposition
          verb>pronoun
        `,
      ],
      [
        -0.5,
        `
          article>auxiliary article>ing auxiliary>unit because>contraction because>never because>verb ing>and
          kit>article kit>because kit>opener kit>part manner>because part>because part>never preposition>pronoun
          pronoun>manner pronoun>number pronoun>other unit>number unit>preposition verb>ly verb>manner
        `,
      ],
    ],
    behind: [
      [1, 'as>well up>up your>front'],
      [
        0.75,
        `
          and>five and>knees and>off back>in big>toe i>won't it>in last>one let>go need>to one>up tell>me
          the>bottom the>left to>you whole>foot will>do you>like
        `,
      ],
      [
        0.5,
        `
          a>march a>moment a>side a>strap and>hold and>rest and>right and>six and>switch and>walk at>all back>out
          back>up begin>with bottom>stair carry>on come>down comes>in dead>bug don't>jump each>leg evening>all
          every>rep fifteen>seconds five>six from>it go>again go>one hang>on high>knees i>know if>that in>between
          is>not it>out keep>going lean>in minute>between nine>ten no>more of>those on>them on>you one>go or>so
          other>arm other>side other>way ribs>down sit>up six>seven some>water stop>there straight>ahead thank>you
          that'll>do that's>all that's>it that's>us that>twice the>board the>chest the>fingers the>ground
          the>middle the>sofa the>top there>for this>one times>through to>finish two>minutes two>one under>you
          up>is up>quick walk>back way>up wet>leaves you're>ready you've>not you>pull you>push your>lot
        `,
      ],
      [
        0.25,
        `
          9>10 a>band a>doddle a>hundred a>lap a>leg a>pendulum a>skips a>spaniel a>string a>weight a>while an>inch
          and>again and>eight and>go and>hang and>lean and>ten anybody>asks arms>out at>it back>knee back>there
          behind>you both>feet bus>stop change>legs chest>proud chest>up child's>pose come>up do>two done>up
          down>one down>slowly each>other each>side end>evening feet>up five>degrees five>times flat>back for>four
          for>it for>this for>three for>two four>breaths four>counts four>five front>heel get>there go>back
          goblet>squat going>down good>leg got>it half>way have>to hip>width hollow>hold i've>looked i>am i>did
          i>promised i>see in>each in>front in>it in>you into>it is>plenty it>goes it>harder it>helps it>off
          it>smaller it>there just>you knee>raises knee>soft knee>up knees>out lamp>post last>round leave>this
          leg>long let>you little>breaths lower>it need>it no>bouncing no>higher no>weights number>two of>floor
          of>these off>it off>to on>back on>each on>tuesday one>down one>rest park>it push>back quiet>feet rack>it
          roll>back roll>out round>so same>thing second>go second>set seconds>each see>you shoulders>down
          side>plank sideways>on soft>knees split>squats stand>up stay>there step>away straight>on support>hold
          swap>over ten>more that's>fine that's>one that>hip the>arms the>bridge the>crate the>curb the>day the>end
          the>fence the>heels the>knee the>legs the>mat the>menu the>number the>other the>pull the>rack the>shin
          the>spine the>step the>straight the>third the>toes the>wall the>wrists this>morning three>four
          three>rounds three>seconds three>sets times>round to>breathe to>side to>stand to>this too>high
          turn>around two>rounds up>again way>out we>are we>go whole>time with>control you're>on you>are you>came
          you>lift you>need you>sit you>stand you>want your>arm your>backs your>bum your>ears your>eyes your>fists
          your>hands your>nose your>pockets your>shirt your>tailbone your>thigh your>thighs your>toes
        `,
      ],
      [
        -0.25,
        `
          a>chap a>dog a>drink a>few a>full a>knee a>plank a>shoulder a>slow a>wall a>wee and>a and>drop and>i
          and>just and>leg and>let and>no and>now and>out and>pull and>rows and>take and>the and>then and>you
          are>tight are>we as>far asked>me at>the back>to bit>of breath>in call>it can>do can>hear can>tell
          chest>height come>in dead>bugs dead>lift do>it do>not do>that do>this don't>go each>one empty>bar
          end>hello every>exercise five>four for>a for>one for>the four>three front>foot get>it go>two hang>off
          hips>up i>said i>was if>the if>you if>you're if>your in>here in>the in>this in>total is>all it's>that
          it>feels keep>it knees>down knees>up last>thing leg>back leg>goes leg>only leg>up let>us like>you
          lower>back next>one no>burpees no>sagging not>doing of>six of>the of>your off>four on>saturday on>the
          on>your one>way one>weight opposite>arm opposite>leg other>knee out>breath out>straight over>it palms>up
          pelvic>floor people>say pull>up push>up reverse>lunges right>hand same>time same>way seconds>off
          shake>out sharp>pain step>back step>it step>off straight>down tell>you ten>minutes ten>steps than>you
          that's>a that's>how that's>the that's>your that>back the>back the>ball the>band the>bear the>big
          the>ceiling the>clock the>hamstrings the>hand the>handle the>last the>mailbox the>one the>rail the>room
          the>same the>shoulder the>squat the>weights the>whole them>back three>breaths three>two till>it to>eight
          to>get to>one to>say to>the to>your twenty>metres two>sets up>to upside>down warm>up we'll>go with>a
          with>the with>your you're>feeling you're>one you've>done you>get you>stop your>belly your>big your>bottom
          your>elbows your>head your>head's your>heel your>heels your>lower your>lowest your>second your>tail
          your>tummy
        `,
      ],
      [
        -0.5,
        `
          a>day a>mat as>you at>home breathe>in breathe>out dead>lifts from>there give>me half>kneeling in>one
          it's>not it>down legs>long let>it let>them make>it ninety>seconds operated>leg the>bar the>first the>head
          the>hips the>leg the>rings the>side the>stage the>towel to>help to>see two>hundred you>feel your>hand
          your>own
        `,
      ],
      [-0.75, 'before>you first>time you>know'],
    ],
    'first-kinds': [
      [0.75, 'and>number because>be hello>article number>and number>contraction other>because'],
      [
        0.5,
        `
          adjective>because adjective>never adjective>subject adjective>to adverb>noun adverb>part
          amount>contraction and>adjective and>kit and>noun and>particle article>compared because>adjective
          because>ed because>never because>owned contraction>day contraction>never contraction>object do>never
          ing>adjective never>article never>did noun>person number>hello number>subject order>preposition other>and
          other>person part>order particle>because particle>particle preposition>to then>particle then>unit
          verb>and verb>kit verb>object verb>part
        `,
      ],
      [
        0.25,
        `
          adjective>but adjective>ed adjective>er adverb>adverb adverb>amount adverb>compared adverb>preposition
          adverb>subject adverb>to amount>unit and>adverb and>have and>never and>other and>part and>verb article>do
          article>subject article>unit article>verb be>subject because>did because>do because>modal because>noun
          because>verb but>never compared>unit contraction>have contraction>owner did>adjective did>subject
          do>amount do>pointer does>verb ed>s er>of hello>adjective hello>day hello>noun hello>number hello>other
          hello>owner hello>person ing>particle kit>because kit>object never>er never>ing never>particle
          noun>adjective noun>be noun>noun noun>other number>have number>owned number>pointer number>verb or>never
          or>number or>verb order>number order>to other>hello other>order other>pointer owned>owner part>adjective
          part>ing part>other particle>and particle>contraction particle>verb person>and praise>and praise>because
          praise>never praise>particle praise>preposition praise>subject praise>unit s>never subject>never
          subject>particle subject>subject then>part unit>noun unit>other verb>because verb>does verb>noun verb>s
        `,
      ],
      [
        -0.25,
        `
          adjective>be adjective>ing adjective>modal adjective>number adjective>owned adjective>s adjective>want
          adverb>kit adverb>of amount>person amount>subject and>s and>subject article>adjective article>adverb
          article>est article>hello article>preposition be>article because>adverb because>because
          because>contraction because>part because>pointer because>preposition but>preposition but>subject
          compared>noun compared>verb contraction>article contraction>ing contraction>preposition contraction>unit
          day>contraction did>particle did>preposition do>owner do>verb ed>particle er>does est>noun hello>and
          hello>do hello>never ing>part ing>subject kit>of kit>order kit>owner kit>preposition kit>subject
          never>compared never>kit never>never never>noun never>object noun>adverb noun>compared noun>owner
          noun>then number>adjective number>amount number>do number>kit number>person number>s number>then
          number>to or>do order>amount order>particle order>pointer other>be other>modal other>noun other>of
          other>to owned>adverb owned>article owned>did owner>adjective owner>part part>article part>hello
          part>number part>s part>then part>verb particle>noun person>does person>preposition person>verb
          pointer>adjective pointer>kit pointer>of pointer>particle pointer>unit praise>part praise>pointer
          preposition>adverb preposition>contraction preposition>noun preposition>owner s>be s>contraction s>hello
          s>number s>verb subject>amount subject>be subject>hello subject>number subject>other subject>part
          subject>want then>adverb then>contraction then>s to>verb unit>article unit>preposition verb>ed
          verb>number verb>of verb>particle verb>preposition verb>subject want>particle
        `,
      ],
      [
        -0.5,
        `
          adjective>amount adjective>article adjective>kit adjective>object adjective>other adjective>owner
          adverb>contraction adverb>particle adverb>verb and>owned and>pointer article>amount article>of
          article>order article>person because>article because>ing because>owner because>subject contraction>did
          contraction>number contraction>particle contraction>pointer contraction>verb contraction>want do>object
          hello>part hello>verb kit>be never>do noun>subject number>does or>contraction or>subject order>day
          order>unit other>article owner>person part>and part>be part>unit particle>adjective particle>subject
          particle>to pointer>other praise>adjective praise>noun praise>person subject>because subject>do
          subject>have subject>ing then>subject verb>to
        `,
      ],
      [-0.75, 'amount>of and>hello and>preposition number>or subject>ed then>preposition'],
      [-1, 'and>because'],
    ],
    'first-words': [
      [0.75, "and>no and>two it's>if keep>and"],
      [
        0.5,
        `
          3>and a>let and>about and>forty and>heavier and>in and>now and>only and>up and>water and>while breathe>if
          bum>on chest>as chest>on come>the don't>bring don't>if elbows>to feel>and feet>hands feet>up five>if
          forearm>elbows go>that's i'm>all i'm>if i'm>with i>if i>is i>it's i>press if>breathe if>wait like>like
          make>make no>follow one>breathe punch>and racks>hooks six>seven so>breathe so>if that's>and that's>nine
          that's>thirty the>a the>back the>drag then>both there's>on they>up three>four twenty>twenty two>you we>a
          you're>i you>you
        `,
      ],
      [
        0.25,
        `
          12>and 1>2 3>4 8>then a>before a>did a>do a>feet a>half a>up a>you're add>when all>move all>out
          and>anything and>arms and>bar and>between and>bottom and>breathe and>deadlift and>feet and>get and>grab
          and>grow and>heal and>hips and>hold and>i and>i'm and>ice and>inner and>long and>lovely and>number
          and>off and>over and>people and>same and>so and>some and>somebody's and>stand and>straps and>that's
          and>then and>twenty arms>a arms>legs arms>off as>like as>out as>that's because>one bend>a bend>straight
          bend>to big>as both>heel both>just bottom>and breathe>half bring>with calf>hands change>and come>feet
          come>if come>that count>and do>instead do>just do>the don't>4 don't>as don't>at don't>come don't>in
          don't>it's don't>that's don't>then drop>to eight>is elbow>if elbows>step everyone>you face>the feel>if
          feet>and feet>big feet>nose feet>out feet>tap fifteen>and fifteen>rest first>1 five>six for>you forty>and
          forty>five four>down four>five four>the gently>the get>off get>on go>down goblet>one good>and good>minute
          good>now good>rest hands>and hands>pull hands>slide hands>the hands>tip hang>and hang>then hang>there
          have>for have>if heel>up hm>no hold>five hold>knees hold>or hold>stay hold>want hook>and i'm>a i'm>one
          i've>no i've>the i>3 i>after i>fifteen i>five i>go i>no i>okay i>twice i>um i>watch if>chest if>eight
          if>find if>floor if>lively if>plank if>shuffle if>somebody's if>steady if>stop it's>dead it's>don't
          it's>first it's>i it's>tiny it's>tuesday it>back it>chest just>back just>only just>three keep>change
          keep>flat keep>stay keep>to knees>don't knees>six land>if last>and last>everything lean>hold lean>thirty
          leave>is let's>just let>draw let>if let>out let>stay let>work lie>knees lift>for lift>side lift>swing
          like>if look>it lovely>now lower>your make>about make>if mine>moose mini>feet move>to my>half nearly>and
          never>without nice>don't nice>next nice>nice nine>and nine>ten ninety>off no>if no>or no>three not>in
          not>on not>you okay>you've on>and on>arms on>one one>down one>hands one>in one>no one>push one>to one>two
          only>on or>or out>both out>no out>one palms>press pause>and people>they press>a press>elbows press>hands
          press>like press>that pull>don't pull>if pull>squeeze push>if put>just put>or put>three reach>for
          right>arm right>sit right>up right>your same>the scale>for scoot>feet second>if set>set shins>no sit>a
          sit>arms sit>bottom sit>half sit>hands sit>take sit>the sit>you six>a six>i slow>don't slow>that's
          slow>then so>bar so>it so>long so>out so>put so>three so>top socks>the some>give somebody's>and
          somebody>a sorry>the squeeze>in squeeze>then stand>it's stay>and steady>one stop>keep stop>up swing>leg
          take>don't take>take take>up ten>if ten>out ten>the that's>don't that's>down that's>four that's>legs
          that's>my that's>on that's>somebody that's>we'll that's>you that's>you've that>if that>last the>bounds
          the>heel the>lean the>push the>same the>so the>stand the>stop the>these the>you then>all then>don't
          then>four then>i then>if then>in then>sit then>six then>ten then>we'll there's>go they've>and this>in
          this>knees this>this this>you three>if three>the three>walk three>your toes>sit tuck>toes turn>front
          turn>or twelve>last twenty>if two>have two>if two>the two>then two>three up>down up>feet up>like
          up>second up>three use>up walk>back walk>tall walk>walk watch>as we'll>hmm we>so when>the where>a
          while>the you'll>squeeze you're>and you're>out you>down you>on you>or you>right you>that you>when
          your>your
        `,
      ],
      [
        -0.25,
        `
          12>i 2>and 5>and a>as a>that's actually>no add>you and>bend and>both and>cross and>cushion and>drive
          and>fifteen and>fold and>four and>hang and>i'll and>keep and>leg and>legs and>like and>look and>of
          and>press and>put and>russian and>steady and>tall and>that and>them and>to and>we'll and>which and>with
          and>you and>your back>feet bar>elbows because>it bend>if bend>keep bend>then blow>out both>stay
          bottom>feet bottom>if breathe>i breathe>out bridges>then bring>change build>hold come>and come>hands
          come>now did>the do>alright do>one don't>back don't>i don't>like don't>on don't>so don't>there's
          don't>three don't>tip don't>to don't>while don't>your double>if ease>don't everybody>make feel>cheek
          feet>hip feet>if feet>stand feet>toes five>four five>i float>and four>three give>if go>eat go>if go>on
          go>right good>good good>morning hands>feet hands>knees hands>let hands>lift hands>squeeze have>and
          heavier>if hip>next hold>feet hold>for hold>hands i'll>go i'll>stop i'll>when i'm>and i'm>i i've>breathe
          i've>my i>back i>in i>once i>see i>ten i>that i>that's i>think i>this i>three i>two i>what i>who i>you
          ice>if if>a if>drop if>five's if>leave if>make if>one if>or if>stay if>that's if>the if>turn if>you
          if>you're if>you've in>out it's>chin it's>half it's>now it's>same it's>you'll it>and it>your just>the
          keep>close keep>don't keep>drop keep>good knees>push knees>that's last>make lean>walk legs>sit let's>it's
          let>float let>keep let>the lift>lower like>a like>and like>don't lose>if lovely>lovely lower>touch
          make>you my>one my>the no>grip no>no no>you're not>i not>one now>that's now>the now>this on>i one>and
          one>hold one>if one>on one>sit one>swing only>stay or>if out>up people>it's pick>and press>breathe
          press>the pull>elbows pull>lower push>feel put>you reach>and reach>long rest>fifteen ribs>don't
          right>left roll>and same>no second>heel second>off second>set second>whenever sharp>stop sit>and
          sit>cross sit>no slide>breathe slide>if slow>four slow>if slow>slow so>one so>stay so>the so>you're
          so>you've somebody>last stand>and stand>don't stand>hold stand>if step>if step>then stop>if stop>stop
          stop>your straight>no tell>we're ten>each ten>there that's>done that's>i'm that's>it's that's>put
          that's>rack that's>right that's>the that's>there that's>up the>and the>come the>get the>is the>up
          the>you'll then>and then>as then>feet then>five then>float then>go then>hands then>heel then>i'll
          then>legs then>pull then>right then>step then>the then>there's then>up there's>i've there's>now they>the
          this>it's three>let three>please today>we tuck>if turn>look twenty>the two>bells two>it up>knee up>then
          up>two use>so walk>and walk>four walk>if we'll>take we>half while>i wrists>make you're>look you've>and
          you>if you>slide you>too you>well your>and your>keep zip>and
        `,
      ],
      [
        -0.5,
        `
          and>all and>because and>for and>it and>you've both>feet breathe>breathe do>if don't>let don't>roll
          don't>you're drop>push feet>sit five>three half>if hold>thirty i>a if>don't if>hands if>put if>step
          if>use it's>it's it's>you keep>keep knees>sit lean>and let>go lift>hold next>get nice>and out>as
          press>and so>i so>now take>and that's>i the>i the>now then>three there>we three>one walk>come you>check
        `,
      ],
      [-0.75, "and>3 if>it's there's>i"],
    ],
    gap: [
      [0.75, 'up>down'],
      [
        0.5,
        `
          breath>if chest>up forward>as four>five go>one it>so knee>out knees>over knees>up leg>if out>at
          shoulders>on six>seven squats>hold that>and width>and you>if
        `,
      ],
      [
        0.25,
        `
          arm>and arms>long arms>to back>if back>the bend>your bottom>and breath>and breathe>and chair>the down>a
          down>like feet>and fine>a five>six five>then foot>down for>a four>and go>don't go>down go>if go>in
          hands>if hands>off head>and hips>up in>for in>so it>and it>last it>on it>that's it>then left>and leg>back
          leg>don't minutes>on more>and not>there off>and one>down one>that's one>two out>to rest>the rest>you
          rounds>and seconds>on sit>up six>and stop>if ten>and them>if then>sit these>at three>four time>and
          touches>your turn>the twelve>and up>breathe up>i up>no up>one up>then ups>hands week>and you>only
          you>stand
        `,
      ],
      [
        -0.25,
        `
          5>and all>the and>i arms>and as>well as>you at>the away>and away>from back>keep back>knee back>up
          belly>button blow>out breath>out breathe>out bus>stop can>keep can>see chair>feet curls>and do>not
          don't>let down>as down>i down>slow down>two each>leg each>side even>if five>four for>the forty>five
          forward>and four>three front>heel go>go go>on go>so go>up good>good good>leg good>morning half>a
          hands>and hands>as hips>don't hundred>and i>don't if>you if>you're in>a in>between in>one in>the it>as
          it>go it>in it>out it>there keep>hold knees>bent knees>if knees>to last>one leg>long leg>stand legs>if
          legs>long legs>up like>a middle>and middle>toes minutes>and minutes>rest more>if not>a now>the number>two
          of>the of>you off>if oh>that's one>foot one>go one>if one>leg one>long one>side one>then other>side
          out>of rest>your seconds>left see>if set>the side>then skin>the slow>slow stand>up straight>and that>you
          the>floor the>other there>for there>we there>you these>and they>don't this>morning three>and three>two
          time>i times>a to>do twenty>five two>and two>one up>off up>on up>tall up>there up>to up>two up>your
          warm>up way>down way>up with>no you>feel you>get you>go you>know you>so you>that's your>shoulders
        `,
      ],
      [
        -0.5,
        `
          all>right and>then change>legs fine>if hand>if in>front let>go like>it's like>you're off>the other>one
          out>as shoulder>blades shoulders>let stop>and time>if you>and
        `,
      ],
      [-0.75, 'back>down'],
    ],
  },
}
