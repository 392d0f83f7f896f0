/** Decides whether an everyday word ("row", "bridge", "step up") is the name of an exercise at its place in a text. */
import type { FoundName } from './find-entry.ts'

/** True when the words around a found name make it a name. Names that mean nothing else always are. */
export function isNameHere(text: string, found: FoundName): boolean {
  const said = text.slice(found.offset, found.offset + found.length)
  if (found.kind === 'own' && !found.slip && !isPartAndVerb(said)) return true
  const before = text.slice(Math.max(0, found.offset - 60), found.offset).toLowerCase()
  const after = text.slice(found.offset + found.length, found.offset + found.length + 40).toLowerCase()
  if (/^\s+of\b(?!\s+(?:these|those|them|that|each)\b)/.test(after)) return false
  if (isAnnounced(before) || isCalledFor(before, after)) return true
  if (isPartAndVerb(said)) return false
  if (standsAlone(before, after)) return !isOrder(said) || endsWithOpener(before)
  if (found.kind === 'thing' || found.slip) return /\s/.test(said) && !found.slip && isNoun(before, after)
  return isPlural(said) ? !isVerbOf(before) : isNoun(before, after)
}

const OPENERS =
  'and|then|so|now|right|okay|ok|next|next up|next one|last one|first one|first|lastly|last|finally|the|a|our|your|some|big|slow|proper|back to|on to|to the|go|just'
const CLOSERS = 'go|next|then|now|please|again|time|everyone|everybody|first|and go|here we go|to start|to finish|today'
const BREAK = '[.,;:!?…—–\\n\\v]|\\s-\\s'

/** Alone between two breaks, but for small opening and closing words. */
function standsAlone(before: string, after: string): boolean {
  const head = new RegExp(`(?:^|${BREAK})\\s*(?:(?:${OPENERS}),?\\s+){0,3}$`)
  const tail = new RegExp(`^\\s*(?:(?:${CLOSERS})\\s*){0,2}(?:$|${BREAK})`)
  return head.test(before) && tail.test(after)
}

/** Right behind words that bring a name. */
function isAnnounced(before: string): boolean {
  const bringers =
    "next up|next is|next up is|next one is|station (?:\\w+)|exercise (?:\\w+)|move (?:\\w+)|drill (?:\\w+)|move(?:d|ing)? on to|on to|onto|back to|go to|straight into|into|(?:this|it|that)(?: one)?(?:'s| is)(?: called)?|called|calls? (?:it|this)|known as|let'?s (?:do|try|go|start)|start(?:ing)? with|finish(?:ing)? with|begin with|time for|ready for|going to do|gonna do|we'?ll do|you'?re doing|doing|number \\w+|sets? of|rounds? of|reps of"
  return new RegExp(
    `\\b(?:${bringers})[,:]?\\s+(?:(?:the|a|an|our|your|some|those|these|with|and|our friend)\\s+)?$`,
  ).test(before)
}

/** "From here we'll twist.": told as what comes. */
function isCalledFor(before: string, after: string): boolean {
  return /\b(?:we'?ll|let'?s)(?: now| then| also)?\s+$/.test(before) && /^\s*(?:[.,;:!?…—–\n\v]|$)/.test(after)
}

/** Used as a noun: an article, number or "more" in front, and no noun behind. */
function isNoun(before: string, after: string): boolean {
  const determined =
    /\b(?:the|a|an|our|your|this|that|these|those|some|more|another|every|each|of|your first|first|last|next|second|third|good|own|\d+|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty)\s+$/.test(
      before,
    )
  const ends =
    /^\s*(?:$|[.,;:!?…—–\n\v]|-\s|(?:is|are|was|and|then|or|to (?:start|finish|begin|end|warm|cool|find|get|do|open)|now|today|with|for|on|at|next|again|please|so|because|but|if|when|where|go|can|will|should|has|have|first|later|we|you|i|they|it|as|just|coming|three|each|per|that|which|right|okay)\b|isn't|you're|it's|we're)/.test(
      after,
    )
  return determined && ends
}

/** A plural that is really a verb after its subject: "it swings", "she rows". */
function isVerbOf(before: string): boolean {
  return /\b(?:it|he|she|who|that|which|just|one|hand|foot|leg|arm|knee|hip|back|body|bell|bar|handle|everybody|everyone|nobody|somebody)\s+$/.test(
    before,
  )
}

/** "Step down." or "Sit up." alone is told to do, not named. */
function isOrder(said: string): boolean {
  return /^(?:good morning|stand on one leg|(?:chin|step|roll|press|push|pull|get|sit|walk|kick|curl|tuck|stand|drop|lift)[ -]?(?:up|down|back|out|over|in|apart))$/i.test(
    said,
  )
}

function endsWithOpener(before: string): boolean {
  return new RegExp(`(?:^|\\s)(?:${OPENERS}),?\\s+$`).test(before) && !/(?:^|\s)(?:and|just|go),?\s+$/.test(before)
}

/** "Heels lift", "hips drop", "arms swing": a part of the body and what it does, not the name of an exercise. */
function isPartAndVerb(said: string): boolean {
  return /^(?:heels|toes|knees|hips|shoulders|arms|legs|hands|feet|elbows|wrists|ankles|ribs|head|chest) (?:lift|drop|swing|roll|circle|tap|bend|slide|raise|curl|turn|tilt|squeeze|step|cross|kick|rock|shrug)$/i.test(
    said,
  )
}

function isPlural(said: string): boolean {
  return /[^s]s$/i.test(said)
}
