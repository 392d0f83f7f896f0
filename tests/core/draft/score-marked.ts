/** Scores a draft against a class whose stretches are marked in its text: segments, doses whole, fields apart, returns. */
import type { LogSheet, Segment } from '../../../shared/log-sheet.ts'
import { doseOf, sameDose } from './spoken-class.ts'
import type { SpokenDose } from './spoken-class.ts'

export interface MarkedClass {
  title: string
  /** Stamped lines with <1>…</1> around what teaches exercise 1, once for the main teaching and once for each return. */
  text: string
  /** In the order of the marks. No dose: none was said. */
  taught: readonly { name: RegExp; dose?: SpokenDose; scheme?: string; tempo?: string }[]
  notTaught: readonly RegExp[]
}

/** Hits, wanted and drafted of what is counted. */
export interface Tally {
  hit: number
  wanted: number
  drafted: number
}

export interface MarkedScore {
  segments: Tally
  returns: Tally
  doses: Tally
  rest: Tally
  tempo: Tally
  scheme: Tally
  /** Names only mentioned that became a segment. */
  mentioned: number
  missed: string[]
}

interface Stretch {
  startMs: number
  endMs: number
}

const MARK = /<(\/?)(\d+)>/g

/** The transcript without its marks. */
export function unmarked({ text }: MarkedClass): string {
  return text.replace(MARK, '')
}

/** Where each exercise is taught by the marks, in ms; time runs evenly through a line, the last one ends at 150 words a minute. */
export function stretchesOf({ text }: MarkedClass): Map<number, Stretch[]> {
  const found = new Map<number, Stretch[]>()
  const lines = text.split('\n').map((line) => {
    const [, min = '0', sec = '0', said = ''] = /^\[(\d+):(\d\d)\] (.*)/.exec(line) ?? []
    return { startMs: (Number(min) * 60 + Number(sec)) * 1000, said }
  })
  lines.forEach(({ startMs, said }, index) => {
    const words = said.replace(MARK, '').split(' ').length
    const endMs = lines[index + 1]?.startMs ?? startMs + words * 400
    const length = said.replace(MARK, '').length
    let marks = 0
    for (const mark of said.matchAll(MARK)) {
      const at = startMs + ((mark.index - marks) / length) * (endMs - startMs)
      marks += mark[0].length
      const list = found.get(Number(mark[2])) ?? []
      found.set(Number(mark[2]), list)
      if (mark[1] === '') list.push({ startMs: at, endMs: at })
      else list.at(-1)!.endMs = at
    }
  })
  return found
}

/** How much two stretches share: common part over all of both. */
function overlap(a: Stretch, b: Stretch): number {
  const common = Math.max(0, Math.min(a.endMs, b.endMs) - Math.max(a.startMs, b.startMs))
  return common / Math.max(1, a.endMs - a.startMs + b.endMs - b.startMs - common)
}

export function emptyScore(): MarkedScore {
  const none = (): Tally => ({ hit: 0, wanted: 0, drafted: 0 })
  return {
    segments: none(),
    returns: none(),
    doses: none(),
    rest: none(),
    tempo: none(),
    scheme: none(),
    mentioned: 0,
    missed: [],
  }
}

/** Adds the score of one class. A segment is found where it overlaps by 30 % and has the name, or by 50 %. */
export function addScore(score: MarkedScore, marked: MarkedClass, sheet: LogSheet): void {
  const stretches = stretchesOf(marked)
  const note = (text: string): number => score.missed.push(`${marked.title}: ${text}`)
  const pairs = marked.taught
    .flatMap(({ name }, index) => {
      const main = stretches.get(index + 1)?.[0]
      return sheet.segments.flatMap((segment) => {
        const shared = main && segment.spans[0] ? overlap(main, segment.spans[0]) : 0
        const isNamed = namesOf(segment).some((known) => name.test(known))
        return shared >= (isNamed ? 0.3 : 0.5) ? [{ index, segment, worth: shared + (isNamed ? 0.7 : 0) }] : []
      })
    })
    .sort((a, b) => b.worth - a.worth)
  const matched = new Map<number, Segment>()
  for (const { index, segment } of pairs) {
    if (!matched.has(index) && ![...matched.values()].includes(segment)) matched.set(index, segment)
  }
  score.segments.wanted += marked.taught.length
  score.segments.drafted += sheet.segments.length
  score.segments.hit += matched.size
  marked.taught.forEach(({ name, dose, scheme, tempo }, index) => {
    const segment = matched.get(index)
    const what = String(name)
    const [, ...again] = stretches.get(index + 1) ?? []
    score.returns.wanted += again.length
    for (const field of ['doses', 'rest', 'tempo', 'scheme'] as const) {
      const wanted = { doses: true, rest: dose?.rest !== undefined, tempo: tempo !== undefined, scheme: !!scheme }
      if (wanted[field]) score[field].wanted += 1
    }
    if (!segment) {
      note(`${what} not found`)
      return
    }
    const left = segment.spans.slice(1)
    const hits = again.filter((one) => {
      const at = left.findIndex((span) => overlap(one, span) >= 0.5)
      if (at >= 0) left.splice(at, 1)
      return at >= 0
    }).length
    score.returns.hit += hits
    if (hits < again.length || left.length > 0)
      note(
        `${what} returns: ${String(again.length)} taught, ${String(segment.spans.length - 1)} drafted, ${String(hits)} right`,
      )
    const got = doseOf(segment.prescription)
    if (sameDose(got, dose ?? {})) score.doses.hit += 1
    else
      note(
        `${what} ${JSON.stringify(dose ?? {})} but drafted ${JSON.stringify(got)} from ${JSON.stringify(segment.prescription?.said.map(({ text }) => text) ?? [])}`,
      )
    if (dose?.rest !== undefined && sameDose({ rest: dose.rest }, got.rest === undefined ? {} : { rest: got.rest }))
      score.rest.hit += 1
    if (tempo !== undefined && segment.prescription?.tempo === tempo) score.tempo.hit += 1
    else if (tempo !== undefined) note(`${what} tempo ${String(segment.prescription?.tempo)}, not ${tempo}`)
    if (scheme !== undefined && segment.prescription?.scheme === scheme) score.scheme.hit += 1
    else if (scheme !== undefined) note(`${what} scheme ${String(segment.prescription?.scheme)}, not ${scheme}`)
  })
  score.returns.drafted += sheet.segments.reduce((sum, { spans }) => sum + spans.length - 1, 0)
  const extra = sheet.segments.filter((segment) => ![...matched.values()].includes(segment))
  for (const segment of extra) {
    note(
      `${segment.exercise.name} was not taught there (${String(segment.spans[0]?.startMs)}–${String(segment.spans[0]?.endMs)})`,
    )
    if (marked.notTaught.some((name) => namesOf(segment).some((known) => name.test(known)))) score.mentioned += 1
  }
}

function namesOf({ exercise }: Segment): string[] {
  return [exercise.name, ...exercise.alsoCalled]
}

/** The F1 measure in per cent. */
export function f1({ hit, wanted, drafted }: Tally): number {
  return wanted + drafted === 0 ? 100 : (200 * hit) / (wanted + drafted)
}

/** The share of what was wanted, in per cent. */
export function share({ hit, wanted }: Tally): number {
  return wanted === 0 ? 100 : (100 * hit) / wanted
}
