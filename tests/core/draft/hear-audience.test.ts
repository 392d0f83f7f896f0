// Whom a class is meant for, heard from its words where nobody has said.
import { describe, expect, it } from 'vitest'
import { audienceOf } from '../../../core/cautions/describe-exercise.ts'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { hearAudience } from '../../../core/draft/hear-audience.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

const KNEE = `[0:00] Welcome to the knee class, everybody here has had an operation, and the surgeon wants you bending.
[0:30] Heel slides. Lie on your back, slide the heel of the operated leg towards you, ten of those.
[1:00] If the wound pulls, stop and tell me.`

describe('hearAudience', () => {
  it.each([
    ['', []],
    ['Squats, ten of them. My physio says hello. I had an operation once.', []],
    ['Grab a chair, sit down, stand up, and again.', []],
    [
      'Pull the chair over. If it helps, a chair. Chairs away, chairs back, the chair again, and the chair. Put the chair there, sit on the chair, hold the chair, chair.',
      [],
    ],
    ['Bump up the weight. A bump in the road. Bumps happen. Bump again.', []],
    [KNEE, ['rehab']],
    [
      'The operated leg goes first. Operated foot on the step. Ask your surgeon. The swelling, the scar, the wound.',
      ['rehab'],
    ],
    [
      'This is for sore ones on the way back. The sore arm hangs. Bad shoulder first. If you had an op, ask. Then the sore side.',
      ['rehab'],
    ],
    ["Steady on your feet, for anybody who's had a fall. I'm seventy four. Hold the rail.", ['older-adults']],
    ['Bad leg day, sore legs. That was a fall from grace. I fell off the box once.', []],
    ['Good morning to my over-seventies. If anybody has osteoporosis, go gently.', ['older-adults']],
    [
      'If you are past the second trimester, prop up. Mind the bump. Ask your midwife about the due date. Mind your bump.',
      ['pregnancy'],
    ],
  ])('"%s"', (text, audience) => {
    expect(hearAudience(text)).toEqual(audience)
  })

  it('is noted by a draft for which nobody has said whom it is for, and read by the cautions only', () => {
    const transcript = parseTranscript(KNEE)
    const sheet = draftSheet({ transcript })
    expect(sheet.audience).toEqual([])
    expect(sheet.audienceHeard).toEqual(['rehab'])
    expect([...audienceOf(sheet)]).toEqual(['rehab'])
    expect(draftSheet({ transcript, audience: ['general'] }).audienceHeard).toBeUndefined()
    expect([...audienceOf({ ...sheet, title: 'Prenatal mobility' })]).toEqual(['pregnancy'])
  })
})
