/** Facts about the names of teachings, read from whole drafts. */
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

const CLASS = `[0:00] Morning everyone, good to see you. Today we have squats, then the dead lift, then rows, all with the bar, and a stretch to finish.
[0:25] So. Squats. Pins first, just under where you end up. Bar on the meat of the shoulders, feet outside your hips, toes out a touch.
[0:50] Sit down between your knees and drive the floor away. Knees follow the toes. You will feel these in the dead lift later. Five sets of five.
[1:20] Chest up the whole way. Breathe in at the top and out as you stand. Two minutes between sets.
[1:50] Right, the dead lift. Bar over your laces, shins to the bar, chest up. Push the floor away and stand up with it. Four sets of three.
[2:20] Don't let your back round. Hips go back first on the way down. Put it down between each one.
[2:50] Next, rows. Hinge forward until your chest is nearly level, soft knees. Pull the bar to your belly button and lower it slowly. Three sets of eight.
[3:20] Elbows brush your ribs. No heaving from the hips. Breathe out as you pull.
[3:50] Last, a chest stretch. Forearm on the upright, turn away until your chest opens. Thirty seconds each side.`

describe('pickNames', () => {
  const { segments } = draftSheet({ transcript: parseTranscript(CLASS) })

  it('names a teaching by the name in front of it, not by another that is only said in it', () => {
    const names = segments.map(({ exercise }) => exercise.name.toLowerCase())
    expect(names.slice(0, 3)).toEqual(['squats', 'dead lift', 'rows'])
  })

  it('makes no exercise of its own of a name alone', () => {
    const [first] = segments[0]?.spans ?? []
    expect(first?.endMs ?? 0).toBeGreaterThan(80_000)
  })
})
