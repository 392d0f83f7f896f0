/** How heavy, how hard, how often, how to progress, on which side, for whom, and doses left open on purpose. */
import type { Saying } from './sayings.ts'

/** A doubt. */
export const ONE_SIDE_MORE = 'One side gets more than the other; write this out.'

export const PROGRESS_SAYINGS: readonly Saying[] = [
  // notes in quotes, as our own writing puts them
  { says: 'load {load:Q}' },
  { says: 'effort {effort:Q}' },
  { says: 'frequency {frequency:Q}' },
  { says: 'progression {progression:Q}' },
  { says: 'open {open:Q}' },
  { says: '^ approx $', means: { approx: true } },
  { says: '( ? )', doubt: 'Marked as unsure.' },
  {
    says: 'start|begin|starting|beginning at|on|from|with {from:N} .. down to {to:N}',
    only: 'falling',
    means: { scheme: 'ladder' },
  },
  {
    says: 'its|is|goes|go|do|doing|set|sets|reps {list:C} ,? each|adding|add|getting|going|lighter|heavier|with|and_that',
    means: { scheme: 'ladder' },
  },
  // the same time once more
  {
    says: '{work:T} ,? .. ,? .. ,? and|then|another? then|another? {twice:T|N} more|again',
    only: 'the same twice',
    means: { again: true },
  },
  { says: '{work:T} ,? .. ,? .. ,? and|then another {twice:T}', only: 'the same twice', means: { again: true } },
  // the number called by that name, which is else a label
  { says: '{reps:N} is|are the|your|our|todays|my magic|lucky? number' },
  { says: 'the|your|our|my|todays magic|lucky|target? number .. is {reps:N} !sets|rounds' },
  { says: '{work:T} on_the_clock ,? .. ,? .. <amrap>', means: { scheme: 'amrap', reps: 'max' } },
  { says: '^ {perWeek:N} sessions <week>' },
  // more for one side than for the other
  ...['sets', 'reps'].flatMap((unit): Saying[] =>
    (['N', 'a|an|another|one'] as const).flatMap((count): Saying[] => {
      const kept = count === 'N' ? `{${unit}:N}` : count
      const means = count === 'N' ? {} : { [unit]: { min: 1, max: 1 } }
      const doubt = ONE_SIDE_MORE
      return [
        { says: `${kept} extra|additional|more|bonus|further ${unit} ,? .. <lesser> <limb>|one`, means, doubt },
        { says: `${kept} ${unit} .. <lesser> <limb>|one extra|more`, means, doubt },
        ...(unit === 'reps' && count === 'N'
          ? [{ says: `${kept} extra|additional|more on|for .. <lesser> <limb>|one`, means, doubt }]
          : []),
        {
          says: `<lesser> <limb>|one .. gets|get|has|does|needs|do|with? ${kept} extra|additional|more ${unit}?`,
          means,
          doubt,
        },
        { says: `give|do|add .. <lesser> <limb>|one ${kept} extra|additional|more ${unit}?`, means, doubt },
      ]
    }),
  ),
  {
    says: 'ladder|pyramid ,? {step1:N} {step2:N} {step3:N} [ {step4:N} ] [ {step5:N} ]',
    only: 'steps',
    means: { scheme: 'ladder' },
  },
  // a list that falls or climbs is a ladder, though it sounds like counting
  { says: 'ladder|pyramid|ladders|pyramids ,? .. ,? {list:C}', means: { scheme: 'ladder' } },
  // rounds by the clock, as boxers count them
  { says: '{work:T} rounds ,? and|with? .. {rest:T} to|of|off? breathe|rest|recover|off|recovery|between|in_between' },
  // as much as each can
  { says: '{workMost:T} if you can ,|and|or? and|or? {workLeast:T|N} if you cant|cannot|can_not|not' },
  { says: '{repsMost:N} if you can ,|and|or? and|or? {repsLeast:N} if you cant|cannot|can_not|not' },
  // a start and a target
  {
    says: 'start|begin|starting|beginning at|with|from|on|off .. {work:T} .. to|towards {workTo:T}',
    words: 'progression',
  },
  {
    says: 'start|begin|starting|beginning at|with|from|on|off .. {reps:N} .. to|towards {repsTo:N} reps?',
    words: 'progression',
  },
  {
    says: 'start|begin|starting|beginning at|with|from|on|off .. {work:T} .. build|work|go {workTo:T}',
    words: 'progression',
  },
  {
    says: 'start|begin|starting|beginning at|with|from|on|off? .. {work:T} ... ,|and|then|to_begin_with|to_start_with? ,|and|then? ... ,? build|building|work|working|go|get|creep|progress up? to|towards? {workTo:T|N} !reps|sets',
    words: 'progression',
  },
  {
    says: 'start|begin|starting|beginning at|with|from|on|off .. {reps:N} .. build|work|go {repsTo:N} reps?',
    words: 'progression',
  },
  {
    says: 'build|building|work|working|progress|progressing|move|towards up? to|towards {workTo:T}',
    words: 'progression',
  },
  {
    says: 'build|building|work|working|progress|progressing|towards {holdUp:T} hold',
    only: 'open below',
    words: 'progression',
  },
  {
    says: 'build|building|work|working|progress|progressing|towards {workUp:T}',
    only: 'open below',
    words: 'progression',
  },
  {
    says: 'build|building|progress|progressing|working up? towards|to? {repsTo:N} reps|breaths|$',
    words: 'progression',
  },
  {
    says: 'build|building|work|working|progress|progressing .. {repsUp:N} reps?',
    only: 'open below',
    words: 'progression',
  },
  { says: 'build|work|progress .. {setsUp:N} sets', only: 'open below', words: 'progression' },
  {
    says: 'if|when|once ... easy|easier|comfortable ,? .. ,? go|move|try {repsUp:N} reps?',
    only: 'open below',
    words: 'progression',
  },
  {
    says: '{work:T} to begin|start with ,|and? and|then? build|building|work|go .. to? {workTo:T|N} !reps',
    words: 'progression',
  },
  {
    says: 'add|adding|plus|put_on|+ N|a|one|another reps|breaths .. each|every|per|a week|session|time|day ,? {repsUp:N} reps?',
    only: 'open below',
    words: 'progression',
  },
  // steps from week to week
  { says: 'add|adding|put_on N kg|lb', words: 'progression', clause: true },
  {
    says: 'add|adding|put|put_on T .. each|every|per|a week|session|time|day|workout|fortnight|month ,? until|till|up you? reach|get_to|hit|are_at|can_do|can_manage|to {secondsUp:N} $',
    words: 'progression',
    clause: true,
  },
  ...[
    'reach|get_to|hit|are_at|can_do|can_manage|to|are_doing|make {repsTo:N} reps?',
    'reach|get_to|hit|are_at|can_do|can_manage|to|are_doing|make? a|the|full? {workUp:T}',
    'can_hold|are_holding|hold|reach|get_to .. {holdUp:T|N} hold?',
  ].map((aim): Saying => ({
    says: `add|adding|plus|put|put_on|tack_on .. N|T|a|one|another|some .. each|every|per|a week|session|time|day|workout|fortnight|month ,? .. until|till|up|and? you|youre|your|it? ${aim}`,
    words: 'progression',
    clause: true,
  })),
  {
    says: 'add|adding|plus|put_on|put|+ .. N|a|one|another|some reps|breaths .. each|every|per|a week|session|time|day|fortnight .. until|till|up you? reach|get_to|hit|are_at|can_do|to? {repsTo:N} reps?',
    words: 'progression',
    clause: true,
  },
  {
    says: 'add|adding|plus|put_on .. N|T|D|a|one|some|little|bit .. each|every|per|a week|session|time|day|workout|fortnight|month',
    words: 'progression',
    clause: true,
  },
  { says: 'each|every week|session|time|workout .. add|increase|go_up|try ...', words: 'progression', clause: true },
  {
    says: 'when|once|if ... easy|easier|comfortable|light ,? ... add|increase|go_up|move_up|heavier',
    words: 'progression',
    clause: true,
  },
  {
    says: 'when|once ... add|increase|go_up|move_up|move_on|progress|go_heavier|heavier|add_weight',
    words: 'progression',
    clause: true,
  },
  { says: 'go|move|step up|heavier .. in|the? weight|load|band', words: 'progression', clause: true },
  { says: 'increase the|your? weight|load|reps|time|distance', words: 'progression', clause: true },
  {
    says: 'N more sets|reps|breaths than last|yesterday week|time|session?',
    words: 'progression',
    doubt: 'Last time’s number is not said.',
  },
  {
    says: 'more|another sets|reps|T than last week|time|session',
    words: 'progression',
    doubt: 'Last time’s number is not said.',
  },
  { says: 'add .. weight|load|kilos', words: 'progression', clause: true },
  // open on purpose
  { says: 'as long|often as you like|want|need|can|wish|enjoy', words: 'open' },
  { says: 'as long|often as feels|is|you|it|your|they ...', words: 'open', clause: true },
  {
    says: 'as long|often as ... feels|like|want|need|comfortable|good|fancy|right|enjoy ..',
    words: 'open',
    clause: true,
  },
  { says: 'as much|many as feels|is|seems ..', words: 'open', clause: true },
  { says: 'as much|many as you like|want|need|fancy|feel|enjoy ..', words: 'open', clause: true },
  {
    says: 'until|till it|that|things|you|the|they|your .. eases|lets_go|softens|releases|feel|feels|settles|settle|goes|lengthens|ready|enough ..',
    words: 'open',
  },
  { says: 'until|till it lets_go', words: 'open', clause: true },
  { says: 'at|in your own pace|time|breath|speed', words: 'open', clause: true },
  { says: 'for as long as ...', words: 'open', clause: true },
  { says: 'hold|stay|do|keep|carry|breathe .. for a while|bit', words: 'open', doubt: 'No number was said.' },
  {
    says: 'do|have|give|take .. several|some|a_few of these|those|them|this',
    words: 'open',
    doubt: 'No number was said.',
  },
  { says: 'however|whatever long|many ...', words: 'open', clause: true },
]

export const MANNER_SAYINGS: readonly Saying[] = [
  // the last set, and going to the end
  {
    says: 'take|taking|push|with|do the|your last|final|first|second|third|fourth|fifth sets|one|round .. to|until failure|the_limit|exhaustion|fail',
    means: { effort: 'last set to failure' },
  },
  {
    says: 'last|final sets|one|round .. to|until|till failure|exhaustion|you_fail',
    means: { effort: 'last set to failure' },
  },
  { says: 'last|final sets to|until failure', means: { effort: 'last set to failure' } },
  { says: 'last|final sets ... ... ,? .. to failure', means: { effort: 'last set to failure' } },
  { says: 'last|final sets .. failure|amrap|max|all_out', means: { effort: 'last set to failure' } },
  {
    says: 'until|till|when you cant|cannot|can_not|no_longer|can_no_longer|fail .. reps|form|one|more|another|technique ..',
    means: { reps: 'max', effort: 'until form fails' },
  },
  {
    says: 'until|till .. form|technique breaks|goes|fails|slips|drops|starts|begins|suffers|wobbles|falls ..',
    means: { reps: 'max', effort: 'until form fails' },
  },
  {
    says: 'stop at|on|with the first reps .. loses|lose|breaks|bad|ugly|sloppy|wobbles ..',
    means: { reps: 'max', effort: 'until form fails' },
  },
  { says: 'until|till you lose .. form|control|technique', means: { reps: 'max', effort: 'until form fails' } },
  // effort
  { says: 'keep|make it|this|these moderate|vigorous|light|steady|easy', words: 'effort' },
  { says: 'hold|have|keep a? .. conversation', means: { effort: 'moderate' } },
  { says: 'words at a times', means: { effort: 'vigorous' } },
  { says: 'few words out|between', means: { effort: 'vigorous' } },
  { says: 'rpe of|at|around|:|about? {rpe:N} out_of_ten?' },
  { says: '{rpe:N} rpe' },
  { says: '{rpe:N} out of {ten:N} effort?', only: 'out of ten' },
  { says: 'effort|intensity .. {rpe:N} / {ten:N}', only: 'out of ten' },
  { says: '{rpe:N} / {ten:N} effort|intensity?', only: 'out of ten' },
  { says: 'effort|intensity of|at|around|level? {rpe:N} $' },
  { says: 'rir of|at|around|:? {reserve:N}' },
  { says: '{reserve:N} rir' },
  { says: '{reserve:N} <tank>' },
  { says: '{reserve:N} reps? <tank>' },
  { says: 'leave|leaving|keep|keeping|with {reserve:N} .. in|left $' },
  { says: '{borg:N} on the N|borg scale' },
  { says: 'borg scale? of|at|:? {borg:N}' },
  { says: '{borg:N} borg' },
  { says: 'zone {zone:N}' },
  { says: 'talk but not sing', means: { effort: 'moderate' } },
  { says: 'moderate ,? .. talk .. not sing', means: { effort: 'moderate' } },
  {
    says: 'easy|gentle|light|moderate|steady|hard|high|low|vigorous|strong|comfortable|conversational effort|pace|intensity',
    words: 'effort',
  },
  { says: '~not|isnt|no|never all_out|flat_out', means: { effort: 'all out' } },
  { says: 'max|maximum|maximal effort', means: { effort: 'all out' } },
  { says: '^ moderate|vigorous $', words: 'effort', weak: true },
  { says: 'for time $', means: { effort: 'for time' } },
  // load
  { says: '@|at|with|around about? {percent:N} % <max>?' },
  { says: '{percent:N} % <max>' },
  { says: '^ {percent:N} % $' },
  { says: '@|at|with|using? a|an? pair|two|set of {pairKg:N} kg ..  dumbbells|kettlebells|bells|weights|hands?' },
  { says: '@|at|with|using? a|an? pair|two|set of {pairLb:N} lb .. dumbbells|kettlebells|bells|weights|hands?' },
  {
    says: '@|at|with|using|holding? a|an|the|your? {kg:N} kg .. dumbbell|dumbbells|kettlebell|kettlebells|bell|weight|weights|plate|bar|barbell|ball|vest|each?',
  },
  {
    says: '@|at|with|using|holding? a|an|the|your? {lb:N} lb .. dumbbell|dumbbells|kettlebell|kettlebells|bell|weight|weights|plate|bar|barbell|ball|vest|each?',
  },
  { says: 'bodyweight|body_weight only?', means: { load: 'bodyweight' } },
  { says: 'no weight|weights', means: { load: 'bodyweight' } },
  { says: 'with|a|the? {colour:<colour>} band|resistance_band|loop' },
  { says: 'rate|stroke_rate|rating of|at|:? {rate:N}' },
  { says: '{rate:N} strokes a|per minute' },
  // how often
  { says: '{perWeek:N} times|days|sessions|runs|walks|swims|rides|classes|workouts|x <week>' },
  { says: 'on {perWeek:N} days <week>?' },
  { says: '{perDay:N} times|x|sessions <day>' },
  { says: 'never|not N days in_a_row|running', weak: true },
  { says: 'do|doing .. on? <weekday> ,|and? and? <weekday>? ,|and? and? <weekday>', words: 'frequency' },
  { says: '^ on? <weekday> ,|and? and? <weekday>? ,|and? and? <weekday> $', words: 'frequency' },
  { says: 'every other|second day', means: { frequency: 'every other day' } },
  { says: 'on? alternate days', means: { frequency: 'every other day' } },
  { says: 'most|almost_every days|day|of_the_week', means: { frequency: 'most days' } },
  { says: 'every|each single? day', means: { frequency: 'every day' } },
  { says: 'daily', means: { frequency: 'every day' } },
  { says: 'every|each morning', means: { frequency: 'every morning' } },
  { says: 'every|each night|evening', means: { frequency: 'every evening' } },
  // sides
  { says: 'for? <per> <limb>', means: { perSide: true } },
  { says: 'a side|leg|arm', means: { perSide: true } },
  { says: '<swap>', means: { perSide: true } },
  { says: 'do|for|on? both|either|each side|sides', means: { perSide: true } },
  { says: '<alternating>', means: { alternating: true } },
]
