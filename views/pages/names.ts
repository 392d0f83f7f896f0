/** Plain names of what the catalogue and the sheet know by a word of their own. What has no name here is shown as it is. */
import type { Audience } from '../../shared/log-sheet.ts'

export const POSITION_NAMES: Readonly<Record<string, string>> = {
  standing: 'standing',
  'single-leg': 'on one leg',
  seated: 'sitting',
  supine: 'lying on the back',
  prone: 'lying face down',
  'side-lying': 'lying on the side',
  'all-fours': 'on hands and knees',
  kneeling: 'kneeling',
  'half-kneeling': 'on one knee',
  'hands-supported': 'on the hands',
  'forearm-supported': 'on the forearms',
  hanging: 'hanging',
  'head-below-heart': 'head below the heart',
}

export const REGION_NAMES: Readonly<Record<string, string>> = { 'whole-body': 'whole body' }

export const LEVEL_NAMES: Readonly<Record<string, string>> = {
  starting: 'starting',
  building: 'building',
  advanced: 'advanced',
}

export const AUDIENCE_NAMES = {
  general: 'everyone',
  'older-adults': 'older adults',
  pregnancy: 'pregnancy',
  'after-birth': 'after birth',
  rehab: 'rehabilitation',
  beginners: 'beginners',
  juniors: 'juniors',
} as const satisfies Record<Audience, string>

export const LENGTH_NAMES: Readonly<Record<string, string>> = {
  short: 'under 1 minute',
  middle: '1 to 3 minutes',
  long: '3 minutes and more',
}

export const KIT_NAMES: Readonly<Record<string, string>> = { none: 'nothing needed' }

/** The plain name of a word, or the word itself without its hyphens. */
export function nameOf(names: Readonly<Record<string, string>>, word: string): string {
  // a word may come from an address: `constructor` and the like are no names
  return (Object.hasOwn(names, word) ? names[word] : undefined) ?? word.replaceAll('-', ' ')
}
