/**
 * Words that mean nothing in a clip of its own: they point at the picture, at another exercise or at the room.
 * Source: our own list; the trade's everyday English. "feels like this is heavy" and "like this one" are left alone.
 */
export interface EmptyWords {
  says: RegExp
  /** What to do. */
  tell: string
}

const SHOWN = 'Say in words what is shown.'
const BEFORE = 'Say it again here, or write it on the lesson.'
const PLACE = 'Name the place or the thing.'

export const EMPTY_WORDS: readonly EmptyWords[] = [
  { says: /\blike (?:this|that|so)\b(?! (?:one|is|was|feels?))(?=[\s,.!?]*$|[\s]*[,.!?])/i, tell: SHOWN },
  {
    says: /\b(?:do|move|hold|turn|bend|lift|go|put|place|lower|reach)(?: \w+){0,4} like (?:this|that)\b/i,
    tell: SHOWN,
  },
  { says: /\b(?:this|that) way\b(?! up)/i, tell: SHOWN },
  { says: /\b(?:watch|look at) (?:me|what i(?:'|’)?m doing|my \w+)\b/i, tell: SHOWN },
  { says: /\bas you can see\b/i, tell: SHOWN },
  {
    says: /\bsame (?:again|as (?:before|last time|always|earlier|it was|the last one|the first one|on the left|on the right))\b/i,
    tell: BEFORE,
  },
  {
    says: /\b(?:just |exactly )?(?:as|like) (?:before|last time|last week|earlier|we did(?: \w+){0,2}|i showed you|i said(?: before| earlier)?|the last one|always|usual)\b/i,
    tell: BEFORE,
  },
  {
    says: /\b(?:you know|remember) (?:this|that) one\b|\byou(?:'|’)?ve done (?:this|that|these) before\b|\byou know (?:the drill|what to do)\b/i,
    tell: BEFORE,
  },
  { says: /\bfrom (?:last week|before|earlier|the last one|where we were)\b/i, tell: BEFORE },
  { says: /\bthe other one\b/i, tell: 'Name which one.' },
  { says: /\b(?:over|back) there\b(?=[\s,.!?]*$|[\s]*[,.!?])/i, tell: PLACE },
]
