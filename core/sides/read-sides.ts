/** Reads which sides words name, and how: worked from here on, announced to come first, a limb, or in passing. */
import type { SideNamed } from '../../shared/log-sheet.ts'
import { SIDE_SAYINGS } from './words/en/side-sayings.ts'

/** Words that name a side; offset and length count characters of the text. */
export interface SideFound extends Pick<SideNamed, 'side' | 'as'> {
  offset: number
  length: number
}

/** What a text says of sides, in order of speech, never two of the same words. */
export function sidesIn(text: string): SideFound[] {
  if (!MAY_NAME.test(text)) return []
  const taken: { offset: number; end: number }[] = []
  const found: SideFound[] = []
  for (const { says, side, as } of SIDE_SAYINGS) {
    for (const match of text.matchAll(says)) {
      const offset = match.index
      const end = offset + match[0].length
      if (taken.some((one) => offset < one.end && one.offset < end)) continue
      taken.push({ offset, end })
      const named = side ?? namedSide(match.groups)
      if (as !== null && named !== null) found.push({ side: named, as, offset, length: end - offset })
    }
  }
  return found.sort((a, b) => a.offset - b.offset)
}

/** A cheap look before the sayings: most sentences name no side. */
const MAY_NAME =
  /\b(?:left|right|sides?|other|second|swap|switch|change|over|round|around|both|either|alternat\w*|opposite|mirror\w*|total|then|([a-z]+) and \1)\b/i

function namedSide(groups: Readonly<Record<string, string | undefined>> | undefined): 'left' | 'right' | null {
  const said = Object.values(groups ?? {})
    .find((one) => one !== undefined)
    ?.toLowerCase()
  return said === 'left' || said === 'right' ? said : null
}
