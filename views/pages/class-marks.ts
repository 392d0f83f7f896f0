/** Marks of one exercise as the class page shows them: where they stand, its cues, its cautions. */
import type { Caution, Cue, CueKind, LogSheet, Mark, Segment } from '../../shared/log-sheet.ts'
import { formatClock, formatClockMs } from '../../shared/time.ts'
import { placeAddress, timesOf } from './class-input.ts'
import type { ClassWords, NeedInput, Option, WorkInput } from './class-input.ts'
import { optionsOf } from './class-input.ts'
import { CUE_LOOKS } from './cue-looks.ts'
import { explainMark } from './explain-mark.ts'
import { upperFirst } from './format.ts'

/** Where a mark stands, and what can be done about it. */
export interface StatePart {
  /** off = declined, half = proposed, done = accepted. */
  look: 'off' | 'half' | 'done'
  words: string
  why: string
  canAccept: boolean
  canDecline: boolean
}

export interface CuePart {
  id: string
  kind: CueKind
  letter: string
  kindName: string
  clock: string
  href: string
  startMs: number
  /** To the millisecond, for its field. */
  at: string
  words: string
  kinds: Option[]
  state: StatePart
  /** Outside every span of the exercise. */
  outside: boolean
}

export interface NeedPart {
  mark: 'done' | 'stop' | 'warn'
  name: string
  hazard: string
  where: string
  why: string
  source: string
  /** Words to write; '' = it is covered already. */
  offer: string
  /** What `attach` sends, as JSON; '' = it is not said elsewhere. */
  attach: string
  quote: string
}

export interface CautionPart {
  index: number
  hazard: string
  name: string
  words: string
  where: string
  state: StatePart
}

export function statePart(mark: Mark): StatePart {
  const { state, confidence } = mark
  const sure = confidence === null ? '' : `, ${String(Math.round(confidence * 100))} % sure`
  const looks = { proposed: 'half', accepted: 'done', declined: 'off' } as const
  const words = { proposed: `Proposed${sure}`, accepted: 'Accepted', declined: 'Declined' }
  return {
    look: looks[state],
    words: words[state],
    why: explainMark(mark),
    canAccept: state !== 'accepted',
    canDecline: state !== 'declined',
  }
}

export const KIND_NAMES = Object.fromEntries(Object.entries(CUE_LOOKS).map(([kind, { name }]) => [kind, name]))

/** In order of time; those declined last. */
export function cueParts(segment: Segment, recordingId: string): CuePart[] {
  const parts = segment.cues.map((cue): CuePart => ({
    id: cue.id,
    kind: cue.kind,
    letter: CUE_LOOKS[cue.kind].letter,
    kindName: CUE_LOOKS[cue.kind].name,
    clock: formatClock(cue.startMs),
    href: placeAddress(recordingId, segment.id, cue.startMs),
    startMs: cue.startMs,
    at: formatClockMs(cue.startMs),
    words: cue.text,
    kinds: optionsOf(KIND_NAMES, cue.kind),
    state: statePart(cue),
    outside: isOutside(cue, segment),
  }))
  return [...parts.filter(({ state }) => state.look !== 'off'), ...parts.filter(({ state }) => state.look === 'off')]
}

function isOutside(cue: Cue, { spans }: Segment): boolean {
  return spans.length > 0 && !spans.some(({ startMs, endMs }) => startMs <= cue.startMs && cue.startMs < endMs)
}

/** What the exercise needs: what is missing first. */
export function needParts(segment: Segment, work: WorkInput, words: ClassWords): NeedPart[] {
  const parts = work.needs
    .filter(({ segmentId }) => segmentId === segment.id)
    .map((need) => needPart(need, work.sheet, words))
  return [...parts.filter(({ mark }) => mark !== 'done'), ...parts.filter(({ mark }) => mark === 'done')]
}

function needPart(need: NeedInput, sheet: LogSheet, words: ClassWords): NeedPart {
  const { name, offer, source } = words.hazard(need.hazard)
  const isCovered = need.state === 'waived' || (need.state !== 'missing' && need.inClip)
  const isElsewhere = !isCovered && need.said !== null
  return {
    mark: isCovered ? 'done' : need.level === 'must' ? 'stop' : 'warn',
    name: upperFirst(name),
    hazard: need.hazard,
    where: whereOf(need, sheet),
    why: `Because ${need.why}. Concerns ${need.concerns}.`,
    source,
    offer: isCovered ? '' : offer,
    attach: isElsewhere ? attachValue({ ...need, segmentIds: [need.segmentId] }) : '',
    quote: need.said?.text ?? '',
  }
}

/** What a form sends to write a caution said elsewhere on lessons; without ids the form names them. */
export function attachValue(
  input: Pick<NeedInput, 'hazard' | 'said'> & { segmentIds: readonly string[] | null },
): string {
  const { hazard, said, segmentIds } = input
  const on = segmentIds === null ? {} : { on: segmentIds }
  return JSON.stringify({ hazard, text: said?.text ?? '', atMs: said?.atMs ?? null, ...on })
}

function whereOf({ state, inClip, said, segmentId, hazard }: NeedInput, sheet: LogSheet): string {
  const when = said?.atMs === null || said === null ? '' : ` at ${formatClock(said.atMs)}`
  if (state === 'waived') {
    const waiver = sheet.waivers.find((one) => one.segmentId === segmentId && one.hazard === hazard)
    return waiver ? `Waived: ${waiver.reason}` : 'Waived'
  }
  if (state === 'missing') return 'Neither said nor written'
  if (state === 'written') return 'Written on the lesson'
  if (!inClip) return `Said${when}, outside this clip`
  return `Said${when}`
}

/** Cautions that stand on the exercise itself, or on the class. */
export function cautionParts(cautions: readonly Caution[], words: ClassWords): CautionPart[] {
  return cautions.map((one, index) => ({
    index,
    hazard: one.hazard,
    name: upperFirst(words.hazard(one.hazard).name),
    words: one.text,
    where: `${one.source === 'written' ? 'Written' : 'Said'}${one.atMs === null ? '' : `, ${formatClock(one.atMs)}`}`,
    state: statePart(one),
  }))
}

/** Lessons that a caution can be attached to. */
export function lessonChoices(sheet: LogSheet, without: string | null): { id: string; name: string; times: string }[] {
  return sheet.segments
    .filter(({ id, use, state }) => id !== without && use === 'lesson' && state !== 'declined')
    .map((segment) => ({ id: segment.id, name: segment.exercise.name, times: timesOf(segment) }))
}
