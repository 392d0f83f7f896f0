/** Sets, repetitions, breaths, distances, times and holds. */
import { ONE_SIDE_MORE } from './sayings-manner.ts'
import type { Saying } from './sayings.ts'

const SETS =
  'sets|rounds|lots|goes|circuits|laps|times_through|times_round|times_around|series|bouts|efforts|helpings|batches|servings|blocks|runs_through|trips'

/** Contract and relax, before tempo: "push" is no lifting phase here. */
export const CONTRACT_SAYINGS: readonly Saying[] = [
  {
    says: '<hold> .. for? {hold:T|N} ,|and|then? and|then? relax|release|let_go|let_it_go .. for? {rest:T|N}',
    means: { holdPer: 'rep', restBetween: 'reps' },
  },
  {
    says: 'contract|push|squeeze|tense|press|resist .. for? {hold:T|N} ,|and|then? and|then? relax|release|rest|let_go .. for? {rest:T|N}',
    means: { holdPer: 'rep', restBetween: 'reps' },
  },
]

/** A hold inside each repetition is said with a pause, a squeeze, or the end of the movement; other holds are per set. */
export const HOLD_SAYINGS: readonly Saying[] = [
  { says: 'hold {hold:T} each|per|every reps', means: { holdPer: 'rep', isHoldPerSaid: true } },
  { says: 'hold {hold:T} per sets', means: { holdPer: 'set', isHoldPerSaid: true } },
  // in each repetition
  { says: '<pause> .. {hold:T} !down|up', means: { holdPer: 'rep' } },
  { says: '<pause> .. for {hold:N} !reps|breaths', means: { holdPer: 'rep' } },
  { says: '<pause> .. for {hold:T}', means: { holdPer: 'rep' } },
  { says: '<pause> the|a|your|that ... for {hold:T}', means: { holdPer: 'rep' } },
  { says: 'wait .. for {hold:N} !reps|breaths|sets|more|of|<moves>', means: { holdPer: 'rep' }, only: 'up to ten' },
  { says: '<pause> .. for a second', means: { hold: { min: 1, max: 1 }, holdPer: 'rep' } },
  { says: '<hold> .. for a second at|in the <end>', means: { hold: { min: 1, max: 1 }, holdPer: 'rep' } },
  { says: '<pause> {hold:N} $', means: { holdPer: 'rep' } },
  { says: '{hold:T} <pause> .. at|in|on? the? <end>?', means: { holdPer: 'rep' } },
  { says: '{hold:N} second <pause>', means: { holdPer: 'rep' } },
  { says: '<hold> the <end> .. for? {hold:T|N}', means: { holdPer: 'rep' } },
  { says: '<hold> .. at|in the <end> .. for {hold:T|N}', means: { holdPer: 'rep' } },
  { says: '<hold> .. for? {hold:T} at|in the <end>', means: { holdPer: 'rep' } },
  { says: '{hold:T} hold|holds at|in the <end>', means: { holdPer: 'rep' } },
  { says: '<hold> each|every one|reps|time|lift|of? .. for? {hold:T|N} !breaths', means: { holdPer: 'rep' } },
  { says: 'at the <end> ,? hold|pause|squeeze|stay|wait .. for? {hold:T|N}', means: { holdPer: 'rep' } },
  { says: 'at the <end> ,? {hold:T} hold|pause|squeeze', means: { holdPer: 'rep' } },
  { says: '<hold> .. for {hold:T} ,|and|then? and|then? repeat {reps:N} times', means: { holdPer: 'rep' } },
  { says: '^ count {hold:N} $', means: { holdPer: 'rep' }, only: 'up to ten' },
  // per set
  { says: '{sets:N} x|by|times {hold:T} hold|holds|iso|isometric|static', means: { holdPer: 'set' } },
  {
    says: `isometric|isometrics|iso|static ... ,? .. ,? {sets:N} x|by|times|${SETS} of|x|at? {hold:T|N} !reps`,
    means: { holdPer: 'set' },
  },
  { says: 'isometric|isometrics|iso|static ... ,|:|for? for? {hold:T}', means: { holdPer: 'set' } },
  { says: '{sets:N} holds|stretches of|for|x|at|, {hold:T|N}', means: { holdPer: 'set' } },
  { says: '{sets:N} {hold:T} holds|hold', means: { holdPer: 'set' } },
  { says: `{sets:N} <kind>? ${SETS} of|x {hold:T} holds|hold`, means: { holdPer: 'set' } },
  { says: 'hold|holds ,|:? {sets:N} x|by|times {hold:T}', means: { holdPer: 'set' } },
  { says: '<hold> ,|: {hold:T}', means: { holdPer: 'set' } },
  { says: '<hold> ... for {hold:T}', means: { holdPer: 'set' } },
  { says: '<hold> .. for {hold:N} !reps|breaths|sets|<moves>', means: { holdPer: 'set' } },
  { says: '<hold> .. {hold:T}', means: { holdPer: 'set' } },
  { says: '<hold> {hold:N} $', means: { holdPer: 'set' } },
  { says: '<hold> {hold:N} not #', means: { holdPer: 'set' } },
  { says: '{hold:T} hold|holds|isometric|iso|stretch|static', means: { holdPer: 'set' } },
  { says: 'stretch|stretches|plank|isometric|iso ,|:|for? .. for? {hold:T}', means: { holdPer: 'set' } },
  { says: '{hold:T} in|of the? plank|stretch|isometric', means: { holdPer: 'set' } },
]

/** Breaths, strokes, cycles and lengths, before holds: "hold for five breaths" counts breaths. */
export const UNIT_SAYINGS: readonly Saying[] = ['cycles', 'breaths', 'strokes', 'lengths'].flatMap((unit): Saying[] => [
  { says: `{sets:N} <kind>? ${SETS} of|x|at|with|,|:|for? {${unit}:N} .. ${unit}` },
  { says: `{sets:N} x {${unit}:N} .. ${unit}` },
  { says: `{${unit}:N} .. ${unit} x|by|for|times|,? {sets:N} sets|rounds|times` },
  { says: `{${unit}:N} .. ${unit} x|times {sets:N}` },
  { says: `<hold>|breathe|stay|take|for|here .. for {${unit}:N} .. ${unit}` },
  { says: `<hold>|breathe|stay {${unit}:N} .. ${unit}` },
  {
    says: unit === 'lengths' ? '{lengths:N} lengths' : `{${unit}:N} .. ${unit}`,
    ...(unit === 'breaths' ? { only: 'more than one' as const } : {}),
  },
])

/** The same number on one side and then on the other. */
export const SIDE_SAYINGS: readonly Saying[] = [
  { says: `{sets:N} <kind>? ${SETS} <per> <limb> of|x {reps:N} reps?`, means: { perSide: true } },
  { says: `{sets:N} <kind>? ${SETS} <per> <limb> ,? {reps:N} reps`, means: { perSide: true } },
  { says: `{sets:N} <kind>? ${SETS} <per> <limb> , {reps:N} $`, means: { perSide: true } },
  { says: '{reps:N} <per>|a <limb> ,? {sides:N} total|in_total|altogether', means: { perSide: true } },
  { says: '{sides:N} total|in_total|altogether ,? {reps:N} <per>|a <limb>', means: { perSide: true } },
  {
    says: '{reps:N} .. on|to|with? the|your|one? right|left|side|way|first|clockwise|forward|forwards|leg|arm|direction .. ,|then|and? then|and? {sides:N} .. on|to|with? the|your? left|right|other|second|anticlockwise|backward|backwards|back|counterclockwise side|way|leg|arm|one|direction?',
    only: 'same on both sides',
    means: { perSide: true },
  },
  {
    says: '{work:T} .. on|to|with? the|your|one? right|left|side|way|first|leg|arm .. ,|then|and? then|and? {sides:T} .. on|to|with? the|your? left|right|other|second side|way|leg|arm|one?',
    only: 'same on both sides',
    means: { perSide: true },
  },
  {
    says: '{reps:N} .. on|with the|your|one right|left|operated|first|other|bad|good|sore|stiff|weak|weaker|strong|stronger|front side|leg|arm|foot|hand ,|and|then? and|then? then? , ... , {sides:N} on|with the|your other|left|right|good|strong side|leg|arm|foot|hand|one?',
    only: 'same on both sides',
    means: { perSide: true },
  },
  {
    says: '{dist:D} one|this|that|out way ,|and|then? and|then? {sides:D} back|the_other|other way?',
    only: 'same on both sides',
    means: { perSide: true },
  },
  {
    says: 'right|left .. {reps:N} ,|then|and? then|and? left|right .. {sides:N}',
    only: 'same on both sides',
    means: { perSide: true },
  },
  {
    says: '{reps:N} on the|your right|left side|leg|arm|foot|hand? , ... [ , ... ] , and|then? and|then? {sides:N} on the|your left|right|other side|leg|arm|foot|hand|one?',
    only: 'same on both sides',
    means: { perSide: true },
  },
  { says: '{reps:N} on this|that|one|the first? side|leg|arm', means: { perSide: true } },
  // "each" lost on the way
  { says: '{reps:N} side ,|.|$', only: 'two or more', means: { perSide: true } },
  { says: '{sets:N} sets .. <lesser> side|leg|arm', doubt: ONE_SIDE_MORE },
  {
    says: '{sets:N} {plural:P} .. on|to|with? the|your? right|left|first|one side|leg|arm? ,|then|and? then|and? {alike:N} {sides:P} .. on|to|with? the|your? left|right|other|second side|leg|arm?',
    only: 'same on both sides',
    means: { perSide: true },
  },
  {
    says: '{reps:N} reps? l|r|left|right ,|+|/|and|then {sides:N} reps? r|l|right|left',
    only: 'same on both sides',
    means: { perSide: true },
  },
]

export const COUNT_SAYINGS: readonly Saying[] = [
  // "that's one round, and there's three of those"
  { says: 'N sets|rounds ,|and|then? and? theres|we_do|well_do|we_want|there_are|youve_got|you_get {sets:N} <ofThem>' },
  // lists of sets and what is done in each
  { says: `{sets:N} <kind>? ${SETS} of|x|at|with|for|,|:? {work:T}` },
  { says: `{sets:N} <kind>? ${SETS} of|x|at|with|for|,|:? {dist:D}` },
  { says: `{sets:N} <kind>? ${SETS} of|x|at|with|,|:|by|for {reps:N} .. reps|<moves>` },
  { says: `{sets:N} <kind>? ${SETS} of|x|at|with|for|by {reps:N}` },
  { says: `{sets:N} <kind>? ${SETS} .. of {reps:N} .. reps|<moves>?` },
  { says: `{sets:N} <kind>? ${SETS} {reps:N} reps ,? {rest:T} $`, doubt: 'The time at the end was read as rest.' },
  { says: `{sets:N} <kind>? ${SETS} ,|:? {reps:N} .. reps|<moves>` },
  { says: `{sets:N} <kind>? ${SETS} ,|:? {reps:N} $` },
  { says: '{sets:N} x|times|by|at {work:T}' },
  { says: '{sets:N} x|times|by|at {dist:D}' },
  { says: '{sets:N} x|times max|maximum reps?', means: { reps: 'max' } },
  { says: '{sets:N} x {reps:N} reps ,? {rest:T} $', doubt: 'The time at the end was read as rest.' },
  { says: '{sets:N} x {reps:N} reps|<moves>' },
  { says: '{reps:N} reps x|by|for|times|, {sets:N} sets|rounds|times?' },
  { says: '{work:T} for {sets:N} sets|rounds|times|goes' },
  { says: '{work:T} x|by|times|, {sets:N} sets|rounds|times|goes?' },
  { says: '{dist:D} x|by|for|times {sets:N} sets|rounds|times?' },
  { says: '{sets:N} x {reps:N} / {sides:N}', only: 'same on both sides', means: { perSide: true } },
  { says: '{bareSets:N} x {bareReps:N} each $', means: { each: true } },
  { says: '{bareSets:N} x {bareReps:N}' },
  { says: '{bareSets:N} by {bareReps:N}' },
  { says: '{work:N} {rest:P}', only: 'name of an interval', means: { scheme: 'interval' } },
  { says: '{sets:N} {plural:P}' },
  { says: 'sets of {reps:N} reps?' },
  { says: '{sets:N} x =·' },
  { says: '^ sets :? {sets:N} $' },
  { says: 'sets :|= {sets:N} !sets|x|of' },
  { says: 'reps|repetitions :|= {reps:N} !sets|reps|x' },
  { says: '^ reps :? {reps:N} $' },
  { says: ', of {reps:N} $', weak: true },
  { says: 'sets of {work:T}' },
  {
    says: '{sets:N} <kind>? sets|rounds|series|bouts|circuits|trips|times_through|times_round|times_around|runs_through|laps',
  },
  { says: '{sets:N} lot of {reps:N}' },
  { says: '{sets:N} lots of' },
  { says: 'go|come round|around|through .. {sets:N} times' },
  { says: 'through|round|around {sets:N} times' },
  { says: '{sets:N} times? through|round|rounds|around $' },
  { says: '{sets:N} times round|rounds|through|around' },
  { says: '{sets:N} in_total|altogether sets|rounds' },
  { says: 'for {sets:N} sets|rounds' },
  // once more
  {
    says: 'and|then|, .. repeatonce|once_more|do_it_again|do_that_again|do_them_again|repeat_it|repeat_that|go_again !on|with|other|left|right|the|for|N',
    means: { again: true },
    weak: true,
  },
  // what is counted
  { says: '{repsFrom:N} reps or|and more|over|upwards' },
  { says: '{repsFrom:N} reps at least|the_least' },
  { says: '{repsFrom:N} reps minimum' },
  { says: '{repsUp:N} reps or|and fewer|less|under' },
  { says: '{repsUp:N} reps at most|the_most' },
  { says: '{repsUp:N} reps max|maximum|tops' },
  { says: '{reps:N} .. reps' },
  { says: '{reps:N} full ,|then|and', weak: true },
  { says: '{reps:N} .. <moves>' },
  { says: '{reps:N} <move> =.|,|·|on|at|and|or' },
  { says: '{reps:N} <move> $' },
  { says: '{reps:N} .. for_time' },
  { says: '{reps:N} from|off|on your|the? knees|toes' },
  { says: '{reps:N} <of>' },
  { says: '{many:N} <ofThem>' },
  { says: '{reps:N} on this_one $', only: 'two or more' },
  { says: '{many:N} on these|this|those !side|leg|arm|one|foot' },
  { says: '^ same ,? {reps:N} $' },
  { says: '^ first sets ,? {reps:N} $' },
  { says: '{reps:N} to|till|until failure' },
  { says: '{reps:N} ,? not # ,? reps' },
  { says: '{seconds:N} ,? not # ,? seconds' },
  // how often
  { says: 'repeat .. {repeats:N} times' },
  { says: 'x|times {times:N} $' },
  { says: 'again for {sets:N} $' },
  { says: '{times:N} goes|tries|attempts' },
  {
    says: '{times:N} times on|with this|that|each|the|one first|same? side|leg|arm|foot|hand',
    means: { perSide: true },
  },
  { says: 'do|doing|through it|that|this|these|those|them|both {times:N} times', only: 'fewer than a hundred' },
  {
    says: '~see|seen|said|told|say|tell|hear|heard|explained them|it|these|those|this|that|each {times:N} times',
    only: 'fewer than a hundred',
  },
  { says: '{times:N} times', only: 'fewer than a hundred', weak: true },
  { says: 'do|and|we .. that again', weak: true },
  { says: '{work:T} of work' },
  { says: '{work:T} on|at|in each|every|per station|stations|exercise|move' },
  { says: 'work {work:T}' },
  { says: '{work:T} rounds|bouts|efforts|pieces' },
  { says: '{reps:N} in a|each|every|the sets|rounds' },
  { says: '{reps:N} in|to each $' },
  { says: 'pulse|pulsing|pulses it|them|that|this? ,? {reps:N} $' },
  { says: '{reps:N} per|a|each|every set|sets|round|rounds|go|goes' },
  { says: 'there|out and back|home again? is|thats|makes|, about? {dist:D}' },
  { says: 'over {dist:D}' },
  { says: 'over {work:T}' },
  { says: '<failure>', means: { reps: 'max' } },
  { says: 'max !#|people|N reps?', means: { reps: 'max' } },
]
