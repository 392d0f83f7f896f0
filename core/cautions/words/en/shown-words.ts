/**
 * Signs of the movement itself, in the phrase language of `../match-phrase.ts`: read only where no catalogue knows the
 * name, since instructors have names of their own ("the pelican") and describe what is to be done.
 * Source: the trade's everyday English, written for this product.
 */
import type { SignWords } from './sign-words.ts'

export const SHOWN_WORDS = [
  {
    sign: 'rises-from-seat',
    says: [
      'nose|chest .. over .. toes|knees .. & stand|up|press|push',
      'stand .. up ... sit|lower .. down|back|again',
      'sit|sits|lower|lowers|reach .. back|down ... chair|seat & stand|standing|rise|up|before',
      'reach .. back .. for .. seat|chair',
      'land .. on|like ... seat|chair',
      'up_from|out_of|off .. chair|seat .. & stand|rise|push|hands',
    ],
  },
  {
    sign: 'at-seat-front',
    kinds: ['setup', 'execution', 'range'],
    says: [
      'front|edge|end .. of .. seat|chair|bench',
      'seat|chair|bench .. front|edge|end',
      'bum|bottom|backside|bums|bottoms .. forward|forwards|front|edge',
    ],
  },
  {
    sign: 'stands-up',
    kinds: ['execution', 'setup', 'tempo', 'breathing', 'focus'],
    says: [
      'stand|stands|standing .. up|tall',
      'rise|rises|up_you|up_we|up_to_standing|onto_your_feet|on_your_feet|get_up|gets_up|getting_up',
      'stand|stands|rise .. and|then .. sit|lower|down',
    ],
  },
  {
    sign: 'up-on-toes',
    kinds: ['execution', 'setup', 'range', 'tempo'],
    says: [
      'up|rise|come|lift|push|go .. on|onto .. toes|tiptoe|tiptoes|tip_toes|balls_of',
      'lift|raise|peel .. heels',
      'heels .. up|lift|leave|come|off .. floor|ground|high',
    ],
  },
  {
    sign: 'one-foot-off',
    kinds: ['execution', 'setup', 'range'],
    says: [
      'lift|peel|pick|float|raise|take|hover .. one|other|the|a .. foot .. off|up',
      'one|other .. foot|leg .. float|floats|lift|lifts|leaves|leave|comes|come|hovers .. off|up|floor|ground',
      'foot .. clear_of|off .. floor|ground',
      'pick_up|lift|raise|peel|float .. one|right|left|other|your .. foot|leg|knee & balance|balancing|stand|standing|hold|stay|there',
      'balance|balancing|stand|standing .. on .. one|right|left|other|that',
      'bring|bend|lift|kick|curl .. heel .. up|behind ... bottom|bum|backside|behind|seat',
      'weight .. on|over|onto|to .. other|one|left|right|standing .. leg|foot|side',
      'leg|foot .. out .. side|sideways|behind_you',
    ],
  },
  {
    sign: 'narrow-stance',
    kinds: ['setup', 'execution', 'focus'],
    says: [
      'one|a|the .. foot .. in_front_of|in_front|behind|before .. other',
      'heel .. to|against|touching|touches .. toe|toes',
      'tightrope|tram_lines|balance_beam',
      'feet .. together & eyes|balance|stand|still',
    ],
  },
  {
    sign: 'steps-out',
    kinds: ['setup', 'execution', 'range'],
    says: [
      'step|steps|stepping .. out|to|over|forward|forwards|back|backwards|sideways|across .. side|sideways|other|line|it|feet|foot|right|left',
      'step .. sideways|forward|forwards|backwards',
    ],
  },
  {
    sign: 'drops-a-knee',
    kinds: ['setup', 'execution', 'range'],
    says: [
      'step|stride ... back|forward|forwards|behind ... knee',
      'drop|lower|dip|sink .. back|rear|the|one .. knee .. to|towards|down|floor|ground|mat|straight',
      'back_knee|rear_knee .. hovers|hover|kisses|taps|touches|brushes|drops|lowers|goes|down|to|an',
    ],
  },
  {
    sign: 'makes-circles',
    kinds: ['setup', 'execution'],
    says: [
      'draw|make|trace|paint .. circle|circles|letters|alphabet ... foot|leg|toe|toes|hips|knee',
      'circle|circles ... foot|leg|hips|hip & standing|stand|balance',
    ],
  },
  {
    sign: 'folds-forward',
    kinds: ['setup', 'execution', 'range'],
    says: [
      'fold|bend|flop|tip|curl|drape|walk|slide|reach|hang ... forward|forwards|over|down ... ankles|shins|toes|feet|floor|legs|thighs|knees|laces',
      'slide|walk .. hands .. down',
      'hang_forward|flop_forward|fold_forward|fold_forwards|folded_over|fold_over',
    ],
  },
  {
    sign: 'turns-over',
    kinds: ['setup', 'execution', 'range', 'focus', 'tempo', 'fault'],
    says: [
      'upside_down|inverted|turn_over|skin_the_cat',
      'roll|tuck|tip .. back|backwards|over .. between|through|until|till|arms|straps|rings',
      'feet|toes|legs .. over .. head|behind',
    ],
  },
  {
    sign: 'props-on-rings',
    kinds: ['setup', 'execution', 'range', 'fault'],
    says: [
      'jump|climb|press|push|get|step|hop .. up .. top|support',
      'rings .. by|beside|against|tight|turned|in_to|close .. hips|sides|thighs|pockets|body|out',
      'hold|support|prop|carry .. yourself|body|weight .. up|on .. arms|top|hands',
      'hands .. by|beside .. hips|sides|pockets & arms|elbows',
    ],
  },
  {
    sign: 'bar-on-back',
    kinds: ['setup', 'execution'],
    says: [
      'bar|barbell .. on|across|over|high_on|sits .. upper_back|back|traps|trapezius|shelf|meaty|meat',
      'unrack*|walk_it_out|walk_it_back|under_the_bar|step_under & squat|down|sit|knees|hips|crease|depth',
      'break .. at .. hips|knees',
    ],
  },
  {
    sign: 'rows',
    kinds: ['setup', 'execution', 'focus'],
    says: [
      'pull|row|drive|haul|drag|draw .. bar|it|them|weights|weight|bell|elbow|elbows ... belly|tummy|ribs|hip|hips|stomach|navel|button|waist|pocket',
    ],
  },
  {
    sign: 'curls-up',
    kinds: ['setup', 'execution', 'range'],
    says: [
      'curl|peel|lift|roll|crunch|raise .. head|shoulders|chest|upper_back|shoulder_blades|trunk|up .. up|off|towards|forward',
    ],
  },
  {
    sign: 'shin-across',
    kinds: ['setup', 'execution'],
    says: [
      'shin .. across|along|in_front|parallel|on|onto|forward|down .. mat|floor|you|top|front|body',
      'one|front .. shin & behind|back',
      'foot|ankle .. on|over|across .. opposite|other .. knee|thigh & kneel|floor|sink|mat',
    ],
  },
  {
    sign: 'steps-up',
    kinds: ['execution', 'setup'],
    says: [
      'step .. up .. onto|on|to .. step|box|bench|stair|it|kerb|platform',
      'foot .. on|onto .. step|stair|box|bench|kerb & up|stand|push|press|drive|heel|first',
      'foot|feet .. goes|go .. up .. first',
      'foot|heel .. on|onto|flat_on .. step|stair|box|kerb|platform',
    ],
  },
  {
    sign: 'hips-back',
    kinds: ['execution', 'setup', 'focus', 'range'],
    says: [
      'push|send|shove|poke|stick|slide|shoot|shift|drive .. hips|bum|bottom|backside|butt|tailbone|rear .. back|backwards|behind',
      'fold|hinge|hinging|bow|tip .. at|from|forward_from .. hips',
      'hinge|tip|bow|lean|fold .. over|forward|forwards ... chest|flat|level|parallel|back',
    ],
  },
  {
    sign: 'sits-deep',
    kinds: ['execution', 'setup', 'range'],
    says: [
      'sit|sits|sink|squat .. down|back|back_and_down|between ... & drive|push|stand|up|ankles',
      'hip .. crease|crease_of|creases',
      'sit|sits|lower|drop|sink|go .. between|into .. hips|heels|ankles|knees|legs|squat',
      'bend .. knees & straighten|stand|rise|up_again|back_up|come_up|drive',
      'thighs .. parallel|level',
      'squat|squats|squatting',
    ],
  },
  {
    sign: 'presses-overhead',
    kinds: ['execution', 'setup', 'range', 'focus'],
    says: [
      'press|push|punch|drive|reach|lift|take|arms|hands .. overhead|over_your_head|above_your_head|over_head',
      'press|push|drive|punch|send .. up|straight_up|high & elbows|lock|arm|arms|ceiling|sky|ears|head|straight',
      'press|push|reach|drive|punch .. ceiling|sky|roof|lights',
      'press|push|drive|bar|bell|weights|it|them .. past .. nose|face|forehead|ears',
      'lock .. out|it|them .. overhead|above|over .. head|shoe|laces|you|middle',
      'head .. through .. window|gap',
    ],
  },
  {
    sign: 'feet-float',
    kinds: ['execution', 'setup', 'range', 'easier', 'harder'],
    says: [
      'float|lift|take .. feet|toes .. off|up',
      'feet|toes .. come|float|lift|leave|off .. off|floor|ground',
      'float .. feet',
      'in|into|from|top .. support',
    ],
  },
  {
    sign: 'trunk-turns',
    kinds: ['execution', 'setup', 'range'],
    says: [
      'turn|twist|rotate|turning|twisting|rotating .. chest|ribs|ribcage|shoulders|trunk|body|middle|waist|breastbone|spine',
      'look .. over|behind .. shoulder',
      'wind|winding .. round .. waist|spine|trunk',
    ],
  },
  {
    sign: 'chest-lifts',
    kinds: ['execution', 'setup', 'range'],
    says: [
      'lift|raise|peel|float .. chest|breastbone|shoulders|arms|legs|head|everything',
      'chest .. comes|lifts|up|off',
    ],
  },
  {
    sign: 'legs-lower',
    kinds: ['execution', 'setup', 'range', 'tempo'],
    says: [
      'take|send|reach|push|slide|float .. leg|heel|foot|legs ... away|out|long',
      'arm .. leg .. away|opposite|out',
      'opposite .. arm .. leg',
      'lower|drop|reach|straighten|lengthen|stretch|dip .. leg|legs|heel|heels|toes|foot|feet .. down|away|out|long|to|towards',
      'leg|legs|heel|heels|toes .. goes|go|sink|sinks|lower|lowers|down|away|travels .. down|floor|mat|away|long',
    ],
  },
  {
    sign: 'squeezes-kit',
    kinds: ['execution', 'setup', 'tempo', 'breathing', 'focus'],
    says: [
      'squeeze|squeezing|squash|press|crush .. ball|cushion|pillow|towel|cardigan|knees|hands|palms',
      'between .. knees|hands|palms & squeeze|squeezing|press|squash|push|hold',
      'squeeze .. it|in|together',
      'push|press|squeeze .. palms|hands|fists|knees .. together|each|into|against|hard',
      'between .. knees|thighs & pop|put|goes|place|pillow|cushion|ball|towel|cardigan',
    ],
  },
  {
    sign: 'knee-bends',
    kinds: ['execution', 'setup', 'range', 'focus', 'easier'],
    says: [
      'bend|bending|bends .. knee|knees',
      'heel|heels .. towards|toward|to|up_to|up_behind|behind .. bottom|bum|backside|you|seat',
      'slide .. down .. wall|door|little|bit',
      'slide .. down & slide .. up',
    ],
  },
  {
    sign: 'runs-hard',
    kinds: ['execution', 'tempo', 'focus', 'setup'],
    says: [
      'hard|fast|faster|sprint|sprinting|flat_out|race_pace|mile_pace|all_out|percent|tenths|top_speed|quick_feet',
    ],
  },
  {
    sign: 'runs',
    kinds: ['execution', 'setup', 'tempo', 'focus', 'range'],
    says: ['run|running|sprint|sprinting|jog|jogging .. tall|the|up|down|out|round|hard|easy|back|like|at|to'],
  },
  {
    sign: 'travels',
    kinds: ['execution', 'setup', 'tempo', 'focus', 'range', 'caution'],
    says: [
      'jog|jogging|run|running|walk|walking|crawl|crawling|creep|skip|bound|bounding|leap|shuffle|march .. the|along|forward|forwards|across|to|down|up|over|around|round|out|off',
      'to|past|from|at .. cone|cones|tree|bench|line|bend|straight|lane|lamp_post|gate',
      'up|down .. hill|lane|track|straight|slope',
    ],
  },
] as const satisfies readonly SignWords[]

export type ShownSign = (typeof SHOWN_WORDS)[number]['sign']
