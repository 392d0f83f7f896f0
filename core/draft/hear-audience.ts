/** Hears whom a class is meant for where nobody has said: cautions are then asked for on the safe side. */
import type { Audience } from '../../shared/log-sheet.ts'
import { HEARD_AUDIENCES } from './words/en/audience-words.ts'

/** The one guarded audience that the words point to, or none. A guess: it asks for cautions and is never shown as a fact. */
export function hearAudience(text: string): Audience[] {
  const heard = HEARD_AUDIENCES.find(({ plain, hints, least, chairs }) => {
    const said = (text.match(hints) ?? []).map((word) => word.toLowerCase().replace(/s$/, ''))
    if ((text.match(plain)?.length ?? 0) > 0 && said.length > 0) return true
    if (said.length >= least && new Set(said).size > 1) return true
    return chairs !== undefined && said.length > 0 && (text.match(CHAIRS)?.length ?? 0) >= chairs
  })
  return heard ? [heard.audience] : []
}

const CHAIRS = /\bchairs?\b/gi
