// Spoken cautions: which words, which hazard, for one exercise or for the class.
import { describe, expect, it } from 'vitest'
import { findClassCautions, findSpokenCautions } from '../../../core/draft/find-cautions.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

/** Lines of which those that begin with ">" are taught as one exercise each. */
function hear(...lines: string[]) {
  const said = lines.map((line) => line.replace(/^> /, ''))
  const stamped = said.map((text, index) => `[${index}:00] ${text}`).join('\n')
  const transcript = parseTranscript(stamped)
  if (transcript.kind !== 'timed') throw new Error('A timed transcript was meant.')
  const speech = readSpeech(transcript.lines)
  let offset = 0
  const spans = lines.flatMap((line, index) => {
    const start = offset
    offset += (said[index]?.length ?? 0) + 1
    return line.startsWith('> ') ? [{ offset: start, end: offset - 1 }] : []
  })
  const named = (cautions: { hazard: string; text: string }[]) =>
    cautions.map(({ hazard, text }) => `${hazard}: ${text}`)
  return { own: named(findSpokenCautions(speech, spans)), wide: named(findClassCautions(speech, spans)) }
}

const SQUAT = '> Goblet squats. Sit down between your knees and stand up tall.'

describe('findClassCautions', () => {
  it('finds nothing where nothing is said', () => {
    expect(hear('Morning everyone.', SQUAT, 'And that is that.').wide).toEqual([])
  })

  it('takes a line before the first exercise for the class', () => {
    expect(hear('If anything is sharp, you stop.', SQUAT).wide).toEqual(['pain-stop: If anything is sharp, you stop'])
  })

  it('takes nothing of the goodbyes for the class, unless the words reach back', () => {
    expect(hear('Morning.', SQUAT, 'See you Wednesday, and use the railing on the steps.').wide).toEqual([])
    expect(hear('Morning.', SQUAT, 'For every exercise we did, sharp pain means stop.').wide.join()).toContain(
      'pain-stop',
    )
  })

  it('hears no rule on pain in a leg for which somebody is rung', () => {
    expect(hear('If your calf is hot and sore, you stop and ring the doctor.', SQUAT).wide.join()).not.toContain('pain')
  })

  it('reads two short sentences as one thought', () => {
    expect(hear('Sharp pain in the joint? Then you come out.', SQUAT).wide.join()).toContain('pain-stop')
  })

  it('leaves what is said in an exercise to it, unless the words reach further', () => {
    const ours = '> Rows. Give the straps a tug before you lean back.'
    const all = '> Rows. Give the straps a tug before every exercise we do.'
    expect(hear(SQUAT, SQUAT, SQUAT, SQUAT, SQUAT, ours).wide).toEqual([])
    expect(hear(SQUAT, SQUAT, SQUAT, SQUAT, SQUAT, all).wide.join()).toContain('anchor-check')
  })

  it('hears the warning behind words that reach the whole class', () => {
    const rule = '> Rows. Before every exercise, same thing. You give the straps a tug.'
    expect(hear(SQUAT, SQUAT, SQUAT, SQUAT, SQUAT, rule).wide.join()).toContain('anchor-check')
  })

  it('takes a rule on pain of the first minutes for the class even inside an exercise, a later one not', () => {
    const rule = '> Heel slides. If it is sharp, you stop. Slide the heel in and out again.'
    const filler = Array.from({ length: 12 }, () => SQUAT)
    expect(hear(rule, ...filler).wide.join()).toContain('pain-stop')
    expect(hear(...filler, rule).wide).toEqual([])
  })

  it('takes a line between two exercises for the class only where it may hold for all', () => {
    const between = (line: string) => hear(SQUAT, line, SQUAT).wide.join()
    expect(between('Check your straps, give them a tug.')).toContain('anchor-check')
    expect(between('Keep the knees over the toes.')).toBe('')
    expect(between('In everything here, keep the knees over the toes.')).toContain('knee-tracking')
  })
})

describe('findSpokenCautions', () => {
  it('hears a caution that no cue holds', () => {
    expect(hear('> Ankle circles. No more than three out of ten.').own.join()).toContain('pain-stop')
  })
})
