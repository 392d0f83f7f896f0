/** Words right around a number that settle what it counts. Plain words. */

/** Right behind a number: it was written or said before. */
export const WRITTEN_BEHIND =
  /^(?:(?:reps?|seconds?|minutes?|of them|of those|lots|sets|rounds) )?(?:(?:written|wrote|put|noted|marked) down|(?:down )?(?:on|in) (?:the|my|your|this|last \w+) (?:board|sheet|plan|card|list|notes?|book|programme|timetable)|in the plan|at the (?:start|beginning|top)|earlier|before)\b/

/** Right behind a number: both sides are counted in it. */
export const TOTAL_BEHIND =
  /^(?:\w+ ){0,3}?(?:in total|altogether|all together|in all|all in|total|all counted|both count|left and right (?:both )?count)\b/

/** At the end of an amount: both sides are counted in it. */
export const TOTAL_WITHIN = /\b(?:in total|altogether|in all|total)$/

/** Between two numbers: the second shares out the first. */
export const SHARED_OUT =
  /\b(?:so (?:thats|its|that is|it is|thatll be)|(?:thats|its) (?:only |just )?|which is|meaning|or)\b/

/** Right behind a number: so fast it goes, not so often. */
export const PACE_BEHIND =
  /^(?:turns|steps|strokes|beats|revs?|revolutions|pedal strokes|footfalls) (?:a|per|each|every|to the) minute\b/

/** Right in front of a number: it says which, not how many. Plain words. */
export const LABEL_BEFORE =
  /\b(?:station|round|number|part|level|room|figure|page|lap|stage|week|exercise|option|phase|step|gear|channel|row|track|day|grade|platform|block|drill|move|line|lane|chapter|rate|size|age|radio|formula|zone)$/
