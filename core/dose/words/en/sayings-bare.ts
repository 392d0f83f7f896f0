/** What is left when all else is read: levels, changes of mind, and numbers and times that stand alone. */
import type { Saying } from './sayings.ts'

/** How a coach names those for whom a dose is meant. `everyone` is the main dose. */
const LEVELS = {
  beginners:
    'beginners|beginner|newcomers|new_to_this|if_you_are_new|if_youre_new|if_you_are_newer|if_you_are_starting|if_youre_starting|if_you_are_starting_out|if_youre_starting_out|if_you_are_a_beginner|if_youre_a_beginner|if_this_is_new|if_this_is_your_first_time|if_this_is_your_first_week|if_this_is_your_first_class|if_its_your_first_week|if_its_your_first_class|if_youre_just_starting|if_you_are_just_starting|newer_people|new_people|if_its_your_first_time|if_you_are_new_to_this|if_youre_new_to_this|first_timers|level_one',
  intermediate: 'intermediate|intermediates|level_two',
  advanced:
    'advanced|advanced_people|if_you_are_advanced|if_youre_advanced|if_youre_brave|if_you_are_brave|if_you_want_more|if_you_want_a_challenge|if_youre_feeling_strong|if_you_are_feeling_strong|if_you_feel_strong|if_you_are_strong|if_youre_strong|if_you_are_fit|if_youre_experienced|if_you_are_experienced|stronger_people|level_three|if_youve_got_it|if_you_have_got_it|if_youre_used_to_it|if_you_are_used_to_it|if_youve_done_this_before|if_you_have_done_this_before',
  everyone:
    'for_most_of_you|most_of_you|most_people|everyone_else|everybody_else|the_rest_of_you|the_rest|otherwise|all_others|the_others|if_not|everyone|everybody',
} as const

/** Words that stand between the one and the other. */
const LINK =
  'do|go_for|go_to|stop_at|finish_at|aim_for|take|try|for|it_is|its|is|you_do|its_more_like|thats|make_it|get|stick_to|stay_at|can_do|people|folk'

export const BARE_SAYINGS: readonly Saying[] = [
  ...Object.entries(LEVELS).flatMap(([level, phrases]): Saying[] => [
    { says: `or|and|,? {same:N} .. ${phrases} $`, level, after: true },
    { says: `${phrases} ,|:? ${LINK}? ${LINK}? {same:N} =sets|reps|x`, level },
    { says: `${phrases} ,|:? ${LINK}? ${LINK}? {same:N} $`, level },
    { says: `for? ${phrases}`, level, ...(level === 'everyone' ? {} : { after: true as const }) },
  ]),
  { says: '<fix> ,? {same:N} will|ll|is do|plenty|enough|fine' },
  { says: '<fix> ,? <fix>? ,? <fix>? ,? {same:N} $' },
  { says: '{reps:N} each|every|per times' },
  { says: '{reps:N} ,|. for {sets:N} $', only: 'up to ten' },
  { says: '{reps:N} each $', means: { each: true } },
  { says: '{work:T} each =at|on|for' },
  { says: '{work:T} each', means: { each: true }, weak: true },
  { says: 'for|<do> {reps:N} steps|paces' },
  { says: '{reps:N} steps|paces =·' },
  { says: '<do> {reps:N} $', only: 'two or more' },
  { says: '<do> {reps:N} good|slow|full|clean|controlled|nice|smooth|steady|big|really .. ,|$|.' },
  { says: '<do> {reps:N} instead|there|like_that|from_there $', only: 'two or more' },
  { says: '<do> {reps:N} for me|us|now|today|starters', only: 'two or more' },
  { says: '{reps:N} is|are plenty|enough|fine|loads|good' },
  { says: '{reps:N} will|ll|should do|be it|enough|plenty?' },
  { says: '~in|at|number|on|than|the|of {reps:N} =·', weak: true },
  { says: '^ {reps:N} $', only: 'a range' },
  { says: '^ {reps:N} $', weak: true, only: 'two or more' },
  { says: 'then {reps:N} $', weak: true, only: 'two or more' },
  { says: '^ {reps:N} not #', weak: true },
  { says: '<do> a? nice|good|lovely? rounds|nice|full|solid|good|cheeky|quick|easy {reps:N} $' },
  { says: '{reps:N} plenty|loads $' },
  { says: 'ive_got you down for {reps:N}' },
  { says: 'youre|you_are|were|we_are getting|doing|after|on {reps:N} $', only: 'two or more' },
  {
    says: '~in|into|takes|take|took|have|got|had|after|before|within|than|by|at|under|over|the|about|next|first|last|until|till|every|spent|spend|lasts|been|was|is {work:T} !down|up',
    only: 'no whole class',
  },
  { says: 'for about? {work:T}' },
  { says: '~in|at|by|than|about|another|the|last|first|next|next|was|is {dist:D}' },
  { says: 'for about? {dist:D}' },
  { says: '{work:T} $', weak: true },
]
