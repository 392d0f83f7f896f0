/**
 * Puts the script on a clock: when each sentence starts and ends, and when the figure changes what it does.
 *
 * Offers `planClass(parts, lengthOf)`, where `lengthOf(text)` is how long the voice takes, in whole milliseconds.
 * Returns { sentences, stage, sounds, sections, durationMs }, every time in whole milliseconds from the start:
 *   sentences  { startMs, endMs, text, part, exercise, plant }   what the transcript prints
 *   stage      { atMs, to }                                      what the figure does from then on
 *   sounds     { startMs, text }                                 what the voice says (a count is one sound a word)
 *   sections   { atMs, title }
 */
import { beatOf } from './moves.mjs'

export function planClass(parts, lengthOf) {
  const plan = { sentences: [], stage: [], sounds: [], sections: [], parts: [], durationMs: 0 }
  let now = 0
  for (const part of parts) {
    const startMs = now
    if (plan.sections.at(-1)?.title !== part.section) plan.sections.push({ atMs: now, title: part.section })
    for (const line of part.lines) now = planLine(plan, part, line, now, lengthOf)
    plan.parts.push({ id: part.id, exercise: part.exercise ?? null, startMs, endMs: now })
  }
  plan.durationMs = Math.ceil(now / 1000) * 1000
  return plan
}

function planLine(plan, part, line, now, lengthOf) {
  if (Array.isArray(line)) return planSentence(plan, part, line, now, lengthOf)
  if (line.to) plan.stage.push({ atMs: now, to: line.to })
  if (line.count) return planCount(plan, part, line, now, lengthOf)
  return now + Math.round((line.rest ?? 0) * 1000)
}

function planSentence(plan, part, [text, pause, plant = null], now, lengthOf) {
  const endMs = now + lengthOf(text)
  plan.sounds.push({ startMs: now, text })
  plan.sentences.push({ startMs: now, endMs, text, part: part.id, exercise: part.exercise ?? null, plant })
  return endMs + Math.round(pause * 1000)
}

/** Counting falls on the far end of the movement, one word a beat. */
function planCount(plan, part, line, now, lengthOf) {
  const { atMs, to } = plan.stage.at(-1)
  const { firstMs, everyMs } = beatOf(to)
  const skipped = Math.max(0, Math.ceil((now - atMs - firstMs) / everyMs))
  const startMs = atMs + firstMs + skipped * everyMs
  line.count.forEach((text, index) => plan.sounds.push({ startMs: startMs + index * everyMs, text }))
  const endMs = startMs + (line.count.length - 1) * everyMs + lengthOf(line.count.at(-1))
  const text = `${line.count.join(', ')}.`
  plan.sentences.push({ startMs, endMs, text, part: part.id, exercise: part.exercise ?? null, plant: 'counting' })
  return endMs
}
