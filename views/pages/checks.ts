/** The checks page: findings by exercise with place, reason, source and grade, and what closes each. */
import type { Finding, Severity } from '../../shared/check-report.ts'
import type { Segment, Waiver } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'
import { classAddress, placeAddress, timesOf } from './class-input.ts'
import type { ClassWords, NeedInput, WorkInput } from './class-input.ts'
import { attachValue } from './class-marks.ts'
import { undoPart } from './edit-names.ts'
import type { UndoPart } from './edit-names.ts'
import { formatCount, formatList, upperFirst } from './format.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'
import { classRibbon } from './pictures/draw-class-ribbon.ts'
import { describeClass } from './pictures/read-class.ts'

export interface ChecksInput {
  recordingId: string
  title: string
  work: WorkInput | null
  words: ClassWords
}

export interface ChecksPage {
  layout: Layout
  title: string
  address: string
  parts: ChecksParts | null
}

export interface ChecksParts {
  sheetId: string
  version: number
  address: string
  title: string
  ribbon: string
  /** "12 of 14 cautions covered" */
  covered: string
  facts: { label: string; value: string }[]
  undo: UndoPart
  redo: UndoPart
  /** Every caution that is said outside its clip, to be attached at once. */
  attachAll: { values: string[]; label: string; help: string }
  /** The one next step. */
  next: { label: string; href: string; help: string }
  groups: GroupPart[]
  fine: string
}

export interface GroupPart {
  /** '' = the class as a whole. */
  id: string
  name: string
  href: string
  times: string
  counts: string
  findings: FindingPart[]
  waived: WaivedPart[]
}

export interface FindingPart {
  /** Unlike any other on the page, for fields. */
  id: string
  kind: Severity
  message: string
  why: string
  source: string
  ruleId: string
  hazard: string
  place: { href: string; label: string }
  canWaive: boolean
  /** What `attach` sends; '' = nothing to attach. */
  attach: string
  /** Words offered for a caution that is missing; '' = none. */
  offer: string
}

export interface WaivedPart {
  ruleId: string
  hazard: string
  what: string
  reason: string
  by: string
}

export function buildChecksPage(input: ChecksInput): ChecksPage {
  const title = input.work?.sheet.title || input.title
  return {
    layout: buildLayout({ title: `Checks of ${title}`, kind: 'shelf', here: 'shelf', scripts: ['checks'] }),
    title,
    address: classAddress(input.recordingId),
    parts: input.work && buildChecksParts(input, input.work),
  }
}

export function buildChecksParts(
  { recordingId, words }: Pick<ChecksInput, 'recordingId' | 'words'>,
  work: WorkInput,
): ChecksParts {
  const { sheet, report, published } = work
  const lessons = sheet.segments.filter(({ use, state }) => use === 'lesson' && state !== 'declined')
  const groups = [null, ...lessons].map((segment) => buildGroup(segment, recordingId, work, words))
  const each = groups.slice(1)
  const fine = each.filter(({ findings }) => findings.length === 0).map(({ name }) => name)
  const count = (severity: Severity): number => report.findings.filter((one) => one.severity === severity).length
  return {
    sheetId: work.sheetId,
    version: work.version,
    address: classAddress(recordingId),
    title: sheet.title,
    ribbon: classRibbon(sheet, report, {
      ...{ size: 'page', published, here: null, words: describeClass(sheet, report, published) },
    }),
    covered: work.covered,
    facts: [
      { label: '■ Stops', value: String(count('stop')) },
      { label: '▲ Warnings', value: String(count('warn')) },
      { label: '· Notes', value: String(count('note')) },
    ],
    undo: undoPart(work.undo, sheet),
    redo: undoPart(work.redo, sheet),
    attachAll: attachAllOf(work.needs),
    next: nextOf(recordingId, count('stop'), each),
    groups: WORST_FIRST.flatMap((kind) => groups.filter((group) => worstOf(group) === kind)),
    fine: fine.length === 0 ? '' : `Nothing to say of ${formatList(fine)}.`,
  }
}

/** What holds lessons back comes first; within each, the order of the class. */
const WORST_FIRST = ['stop', 'warn', 'note', 'waived'] as const

function worstOf({ findings, waived }: GroupPart): (typeof WORST_FIRST)[number] | null {
  const worst = WORST_FIRST.find((kind) => findings.some((one) => one.kind === kind))
  return worst ?? (waived.length > 0 ? 'waived' : null)
}

function buildGroup(segment: Segment | null, recordingId: string, work: WorkInput, words: ClassWords): GroupPart {
  const id = segment?.id ?? null
  const findings = work.report.findings.filter(({ segmentId }) => segmentId === id)
  const waivers = work.sheet.waivers.filter(({ segmentId }) => segmentId === id)
  return {
    id: id ?? '',
    name: segment?.exercise.name ?? 'The whole class',
    href: placeAddress(recordingId, id, segment?.spans[0]?.startMs ?? null),
    times: segment ? timesOf(segment) : '',
    counts: countsOf(findings),
    findings: findings.map((one, index) =>
      findingPart(one, idOf(one, findings.slice(0, index)), segment, recordingId, work, words),
    ),
    waived: waivers.map((waiver) => waivedPart(waiver, words)),
  }
}

/** Of the same finding the same after others have gone: what is opened or typed at one of them must not move to another. */
function idOf({ segmentId, ruleId, hazard }: Finding, before: readonly Finding[]): string {
  const alike = before.filter((one) => one.ruleId === ruleId && one.hazard === hazard).length
  return [segmentId ?? 'class', ruleId, ...(hazard ? [hazard] : []), ...(alike > 0 ? [alike] : [])].join('-')
}

function countsOf(findings: readonly Finding[]): string {
  const of = (severity: Severity, word: string): string[] => {
    const count = findings.filter((one) => one.severity === severity).length
    return count === 0 ? [] : [formatCount(count, word)]
  }
  return formatList([...of('stop', 'stop'), ...of('warn', 'warning'), ...of('note', 'note')])
}

function findingPart(
  finding: Finding,
  id: string,
  segment: Segment | null,
  recordingId: string,
  work: WorkInput,
  words: ClassWords,
): FindingPart {
  const { ruleId, severity, message, why, source, startMs } = finding
  const hazard = finding.hazard ?? ''
  const need = work.needs.find((one) => one.segmentId === segment?.id && one.hazard === hazard)
  const isOutside = ruleId === 'caution-outside-clip' && need !== undefined && need.said !== null
  const start = segment ? `${upperFirst(segment.exercise.name)}: ` : ''
  return {
    id,
    kind: severity,
    message: start !== '' && message.startsWith(start) ? upperFirst(message.slice(start.length)) : message,
    why,
    source,
    ruleId,
    hazard,
    place: {
      href:
        segment || startMs !== null ? placeAddress(recordingId, segment?.id ?? null, startMs) : answersOf(recordingId),
      label: startMs === null ? (segment ? 'Open' : 'Answer') : `Go to ${formatClock(startMs)}`,
    },
    canWaive: segment !== null && words.canWaive(ruleId),
    attach: isOutside && segment ? attachValue({ hazard, said: need.said, segmentIds: [segment.id] }) : '',
    offer: ruleId === 'caution-missing' ? words.hazard(hazard).offer : '',
  }
}

/** What is asked of the class as a whole is answered where it was added. */
function answersOf(recordingId: string): string {
  return `/add/${encodeURIComponent(recordingId)}`
}

function waivedPart({ ruleId, hazard, reason, by }: Waiver, words: ClassWords): WaivedPart {
  const what = hazard === null ? upperFirst(ruleId.replaceAll('-', ' ')) : upperFirst(words.hazard(hazard).name)
  return { ruleId, hazard: hazard ?? '', what, reason, by }
}

/** The same words for the same hazard go to all their lessons as one. */
function attachAllOf(needs: readonly NeedInput[]): ChecksParts['attachAll'] {
  const outside = needs.filter(({ state, inClip, said }) => state === 'spoken' && !inClip && said !== null)
  const keyOf = ({ hazard, said }: NeedInput): string => `${hazard} ${said?.text ?? ''}`
  const firsts = outside.filter((need, index) => outside.findIndex((one) => keyOf(one) === keyOf(need)) === index)
  const values = firsts.map((need) => {
    const segmentIds = outside.filter((one) => keyOf(one) === keyOf(need)).map(({ segmentId }) => segmentId)
    return attachValue({ ...need, segmentIds })
  })
  const lessons = new Set(outside.map(({ segmentId }) => segmentId)).size
  return {
    values,
    label: `Attach to all: ${formatCount(outside.length, 'caution')} on ${formatCount(lessons, 'lesson')}`,
    help: 'Said once in the class, outside these clips. Their words are written on each lesson; undo takes each back.',
  }
}

function nextOf(recordingId: string, stops: number, lessons: readonly GroupPart[]): ChecksParts['next'] {
  const address = classAddress(recordingId)
  const ready = lessons.filter(({ findings }) => !findings.some(({ kind }) => kind === 'stop')).length
  if (lessons.length === 0)
    return { label: 'Choose lessons', href: address, help: 'No exercise is to become a lesson.' }
  return {
    label: 'Choose and publish',
    href: `${address}/publish`,
    help:
      stops === 0
        ? 'Nothing holds a lesson back.'
        : `${formatCount(stops, 'stop')} open. ${formatCount(ready, 'lesson')} can be published already.`,
  }
}
