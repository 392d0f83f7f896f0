// Where the teaching of an exercise begins and ends: before its name where it is set up first, never in what is told of the one before.
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

const draft = (text: string) => draftSheet({ transcript: parseTranscript(text) }).segments
/** Names with the first words of their teaching, by the seconds they begin at. */
const begins = (text: string) =>
  draft(text).map(({ exercise, spans }) => ({ name: exercise.name, startMs: spans[0]?.startMs ?? -1 }))

const FIRST = `[0:00] Right, first up, goblet squats. Feet hip width, bell at your chest. Sit down between your knees and push the floor away to stand. Keep your heels down. Three sets of ten.`

describe('the teaching of an exercise', () => {
  it('begins with its set-up where the name comes last', () => {
    const [, second] = begins(`${FIRST}
[0:30] And rest. Put the bell down.
[0:40] Now lie on your back, knees bent, feet flat on the mat. Press your lower back down and lift your hips. That's your glute bridge. Twelve of those.`)
    expect(second).toMatchObject({ name: expect.stringMatching(/bridge/i) as string })
    expect(second?.startMs).toBeGreaterThanOrEqual(35_000)
    expect(second?.startMs).toBeLessThan(43_000)
  })

  it('leaves what is told behind its name to the one before', () => {
    const [first, second] =
      draft(`[0:10] The first one I call the garden gate. Stand side on to a wall with one hand on it. Lift your outside knee and swing it open like a gate, then close it. Eight on each leg.
[0:40] Second, the penguin walk. Lift your toes off the floor and walk on your heels. Ten steps there and ten back. Stay near the wall.`)
    expect(first?.prescription?.reps).toEqual({ min: 8, max: 8 })
    expect(second?.spans[0]?.startMs).toBeGreaterThanOrEqual(39_000)
  })

  it('begins behind a dose that is told in the same breath before it, where marks are missing', () => {
    const [, bird, child] =
      draft(`[0:00] next up the dead bug bring your legs to table top and your arms up to the ceiling lower opposite arm and leg away and come back eight each side
[0:30] push back onto all fours bird dog reach one leg back and the opposite arm forward keep your hips level six each side
[1:00] and sit back into child's pose let your forehead rest on the mat stay for five breaths well done`)
    expect(bird?.prescription).toMatchObject({ reps: { min: 6, max: 6 }, perSide: true })
    expect(child?.prescription?.perSide ?? false).toBe(false)
  })
})

describe('no exercise is made', () => {
  it.each([
    [
      'of what another day brings',
      `${FIRST}\n[0:40] that's it next time get ups so bring a cushion thank you bye`,
      /get.?up/i,
    ],
    [
      'of an option that has a name',
      `[0:00] Next up, burpees. Hands down, jump your feet back, chest to the floor. Step back, step in, no jump, we call that a sprawl. Don't let your back sag. Ten of those.`,
      /sprawl/i,
    ],
  ])('%s', (_what, text, name) => {
    const names = draft(text).map(({ exercise }) => exercise.name)
    expect(names.length).toBeGreaterThan(0)
    expect(names.filter((one) => name.test(one))).toEqual([])
  })

  it('of a name that is only pointed at before it is announced', () => {
    const [, second] = begins(`${FIRST}
[0:30] Hinge again with your hands on your hips. That's the deadlift, it's all in there, the whole class is in that.
[0:45] Okay, so deadlift. Bell between your ankles, flat back. Push the floor away and stand tall. Eight of those.`)
    expect(second?.startMs ?? 0).toBeGreaterThanOrEqual(44_000)
  })
})

it('a circuit is over where it is called over', () => {
  const sheet =
    draft(`[0:00] So it's a circuit tonight, twenty seconds on, ten seconds off, four stations, two rounds. High knees, reverse lunges, press ups, skaters.
[0:20] Station one, high knees. Stand tall, drive your knees up to belt height. Three, two, one, go. And rest.
[0:40] Reverse lunges. Step one foot back, drop the knee, push back up. Go. And rest.
[1:00] Press ups. Hands under your shoulders, lower your chest to the floor. Go. And rest.
[1:20] Skaters. Hop side to side, land on a soft knee. Go. And rest. And that's the circuit.
[1:50] Now the wall sit. Back flat to the wall, thighs level. Hold it for forty five seconds. Keep breathing.`)
  expect(sheet.find(({ exercise }) => /wall sit/i.test(exercise.name))?.prescription).toMatchObject({
    sets: null,
    workSeconds: null,
    holdSeconds: { min: 45, max: 45 },
  })
})
