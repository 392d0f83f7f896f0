/** Tempo and rest. Tempo is lowering - pause - lifting - pause, whatever the order it is said in. */
import type { Saying } from './sayings.ts'

/** "between sets", "after each round": what the rest parts. */
const BETWEEN =
  'between|after|in_between|before each|every|the|your|all|next? {between:sets|reps|sides|legs|rounds|stations|exercises|laps|ones|efforts|intervals}'

/** Times are seconds where the coach leaves the unit out. */
export const TEMPO_SAYINGS: readonly Saying[] = [
  { says: 'tempo of|is|at|:? {tempo:M|L|C}' },
  { says: '@ {tempo:M|L}' },
  { says: '{tempo:M|L|C} tempo' },
  { says: '{tempo:M}', weak: true },
  { says: 'tempo of|is|at|:? {down:N} {pause:N} {up:N} {top:N}' },
  { says: 'tempo of|is|at|:? {down:N} {pause:N} {up:N}' },
  { says: '{down:N} {pause:N} {up:N} {top:N} tempo' },
  { says: '{down:N} {pause:N} {up:N} tempo' },
  // square and other breathing by the count: in, hold, out, hold
  {
    says: 'in|inhale for? {down:N|T} ,|.? hold|pause .. for? {pause:N|T} ,|.? and? breathe? out|exhale for? {up:N|T} ,|.? hold|pause .. for? {top:N|T}',
  },
  { says: 'in|inhale for? {down:N|T} ,|.? hold|pause .. for? {pause:N|T} ,|.? and? breathe? out|exhale for? {up:N|T}' },
  {
    says: 'in|inhale through the|your? nose|mouth for? {down:N|T} ,|and|.? and? breathe? out|exhale .. for {up:N|T}',
  },
  { says: 'breathe? in|inhale for {down:N|T} ,|and? and? breathe? out|exhale for {up:N|T}' },
  {
    says: '{down:N|T} second|count? down|lower ,? {pause:N|T} second|count? hold|pause|wait ,? and|then? {up:N|T} second|count? up',
    only: 'up to ten',
  },
  { says: '{down:N|T} second|count? down|lower ,? {pause:N|T} second|count? hold|pause|wait', only: 'up to ten' },
  // lowering
  { says: '{down:N|T} .. on|for the way down', only: 'up to ten' },
  { says: 'on|for the way down ,|for|take|in? for|take? {down:N|T}', only: 'up to ten' },
  { says: '{down:N|T} second|count? slow|slowly? <down>|negatives|eccentrics|lowers|descents', only: 'up to ten' },
  { says: '~stay|hold|keep|sit|held <lower> .. for|in|over|to {down:N|T} !reps|more|of|<moves>', only: 'up to ten' },
  { says: '<lower> {down:T}' },
  { says: 'take {down:N|T} .. to <lower>', only: 'up to ten' },
  // lifting
  { says: '{up:N|T} .. on|for the way up', only: 'up to ten' },
  { says: 'on|for the way up ,|for|take|in? for|take? {up:N|T}', only: 'up to ten' },
  { says: '{up:N|T} second|count? <up> !with', only: 'up to ten' },
  {
    says: '~hold|hold_it|hold_that|hold_them|keep_it|stay|held <lift> .. for|in|over {up:N|T} !reps|<moves>',
    only: 'up to ten',
  },
  { says: 'up {up:T}' },
  { says: 'take {up:N|T} .. to <lift>', only: 'up to ten' },
  { says: '{pause:T|N} second? pause|hold ,? and|then? drive|push|come|stand up', means: { phases: { up: 'X' } } },
  { says: '<burst>', means: { phases: { up: 'X' } }, weak: true },
  {
    says: '{pace:T} all_the_way|both_ways|each_way',
    doubt: 'The time may be for one way or for the whole repetition; ask for the tempo.',
  },
]

export const REST_SAYINGS: readonly Saying[] = [
  { says: `rest|break|breather|recovery|recover|off .. for|of|is|:|=? {rest:T|N} of? rest? ${BETWEEN}` },
  { says: `{rest:T|N} .. rest|break|breather|recovery|off|pause ,? ${BETWEEN}` },
  { says: `{rest:T} ${BETWEEN}` },
  { says: `rest|break ${BETWEEN} ,|is|of|for? {rest:T|N}` },
  { says: `${BETWEEN} ,? .. have|get|take|rest|sit|walk .. {rest:T}` },
  { says: `${BETWEEN} ,|is|of|for|rest|take? rest|take|have? for? {rest:T} rest|off?` },
  { says: 'rest|recover|recovery|break|breather .. for|of|is|:|=? {rest:T}' },
  {
    says: 'rest|recover|recovery for|of|is|:|=? {rest:N} seconds? !reps|sets|x|slow|of|each|times|breaths|ones|more|<moves>',
  },
  { says: '{rest:T} of? off|rest|break|breather|recovery|recover|resting' },
  { says: 'rest|break|breather|recovery|recover , lets? {rest:T}' },
  {
    says: '{rest:T} .. once|when|after|before .. youve|you_have|weve|we_have|both|pair|round|rounds done|finished|both|them|are|is|again ..',
  },
  { says: '{rest:T} before we|you go|start|pick|lift|move again?' },
  { says: 'have|take|get {rest:T} rest .. before' },
  { says: '{rest:T} to catch|get your|a breaths|breath|breather' },
  { says: 'take {rest:T} ,? then|and|before? .. go|start|begin again' },
  { says: '{rest:T} after|behind the|each|every|both pair|pairs|two|both|circuit|trio|superset|lap|lot|second' },
  { says: '{rest:T} to rest|recover|sit|gossip|breathe|chat|moan|drink' },
  { says: 'you get|have {rest:T} !of|on|each|per|hold|work' },
  { says: '{rest:T} to change|move|swap|get .. station|stations|exercise|one', means: { restBetween: 'stations' } },
  { says: '{rest:T} to get from|to|round|into|onto', means: { restBetween: 'stations' } },
  { says: '{rest:T} to move|change|swap|switch|reset|shift|cross|walk' },
  {
    says: '{rest:T} to change|swap|shift|switch|move over|across|round|along|between|on',
    means: { restBetween: 'stations' },
  },
  { says: 'sit|stop|stand|walk about|around|down? {rest:T} !hold|and|then|of|in|with' },
  { says: '{rest:N} off|rest', only: 'tens' },
  { says: 'take {rest:T} off|out|rest|break' },
  { says: 'take|have|rest? {rest:T} after|between each|every|sets|rounds' },
  { says: '{rest:T} .. sit|sat|sitting down in_between|between|after' },
  { says: 'take|have|get|youve_got {rest:T} after the|those|them|these|that' },
  { says: '^ off for {rest:N|T} $' },
  { says: '{rest:T} of standing|walking|resting|nothing|sitting|breathing' },
  { says: '{rest:T} between|in_between' },
  { says: 'water|drink|sip ,? for? {rest:T}' },
  { says: 'between|in_between ,? {rest:T}' },
  { says: BETWEEN, weak: true },
]
