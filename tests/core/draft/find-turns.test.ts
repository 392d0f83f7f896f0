/** Exercises that go in turns: found by how they are called, with their returns and their rounds. */
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

const draft = (text: string) => draftSheet({ transcript: parseTranscript(text) }).segments

/** Name, sets, reps, and how often the class comes back to it. */
const tell = (text: string) =>
  draft(text).map(({ exercise, prescription, spans }) => ({
    name: exercise.name,
    sets: prescription?.sets?.min ?? null,
    reps: prescription?.reps === 'max' ? 'max' : (prescription?.reps?.min ?? null),
    returns: spans.length - 1,
  }))

const PAIR = `[0:00] First up, goblet squats. Feet hip width, bell at your chest. Sit down between your knees and push the floor away to stand. Keep your heels down. Ten of those.
[0:25] Then bent over rows. Hinge at the hips, flat back. Pull the bell to your pocket and lower it slowly. Eight of those, and the whole pair three times.
[0:50] Squats. Chest up, breathe out as you stand. Lovely, keep going. And rows. Elbow close to your ribs, no shrugging.
[1:15] Round two. Squats, sit a bit deeper. And rows. Pull, and lower.
[1:35] Last round. Squats, knees out. Rows, squeeze your shoulder blade.
[1:55] And rest. Well done, have some water.`

describe('two exercises that are called in turns', () => {
  const [squat, row, ...others] = tell(PAIR)

  it('are two, whatever is called again', () => expect(others).toEqual([]))

  it.each([
    ['the first', squat, { sets: 3, reps: 10, returns: 3 }],
    ['the second', row, { sets: 3, reps: 8, returns: 3 }],
  ])('%s has its own count, the rounds of both and its turns', (_, drafted, wanted) =>
    expect(drafted).toMatchObject(wanted),
  )
})

it('a first exercise that a round leaves unsaid comes back where the round begins', () => {
  const unsaid = PAIR.replace('Round two. Squats, sit a bit deeper.', 'Round two. Sit a bit deeper.')
  expect(tell(unsaid)[0]).toMatchObject({ returns: 3 })
})

it('rounds that are told anew while they go replace those that were announced', () => {
  const fewer = PAIR.replace(
    'Round two. Squats',
    'Round two, and the clock is against us, so we call it two rounds. Squats',
  )
  expect(tell(fewer).map(({ sets }) => sets)).toEqual([2, 2])
})

it('another exercise is no turn of the one before because they share a word', () => {
  const names =
    draft(`[0:00] Reverse lunges. Hands on your hips, feet hip width. Step one foot back and tap the knee down, then push back up. Eight each leg.
[0:30] Walking lunges. Same knee, but now you step forward and keep travelling. Big step, drop the back knee, and go. Ten steps, keep your chest up.
[1:00] And dead bugs. On your back, arms up. Lower the opposite arm and leg. Eight each side.`).map(({ exercise }) =>
      exercise.name.toLowerCase(),
    )
  expect(names).toEqual(['reverse lunges', 'walking lunges', 'dead bugs'])
})

const PLAIN_PAIR = `[0:00] first up push ups hands under your shoulders body in one line lower your chest to the floor and press away keep your ribs down ten of those
[0:25] then bent over rows hinge at the hips flat back pull the bell to your pocket and lower it slowly eight of those and the whole pair three times
[0:50] push ups elbows close breathe out as you press lovely keep going eight nine ten and rows elbow close to your ribs no shrugging
[1:15] round two push ups squeeze your backside eight nine ten and rows squeeze your shoulder blade and lower it slowly
[1:35] last round push ups chest to the floor eight nine ten and rows squeeze your shoulder blade
[1:55] and rest well done have some water`

describe('without punctuation', () => {
  it('turns are called in the middle of what is said, also by names that end in a small word', () => {
    expect(tell(PLAIN_PAIR).map(({ returns }) => returns)).toEqual([3, 3])
  })
})

it('a name that is only recalled is no turn', () => {
  const recalled = PAIR.replace('[0:50] Squats.', '[0:45] Squats were ten, rows eight, remember.\n[0:50] Squats.')
  for (const { spans } of draft(recalled))
    for (const { startMs, endMs } of spans.slice(1)) expect(endMs - startMs).toBeGreaterThan(2500)
})

it('a turn that was announced begins where it is called', () => {
  const announced = PAIR.replace('[1:15] Round two. Squats, sit', '[1:15] Squats next. Squats, go. Sit')
  const starts = draft(announced)[0]?.spans.map(({ startMs }) => startMs) ?? []
  expect(starts.some((startMs) => startMs > 75_500 && startMs < 80_000)).toBe(true)
})

it('what is shown between two that go in turns is no member', () => {
  const aside = PAIR.replace(
    '[0:50] Squats.',
    '[0:45] And if your wrists are sore, the wall sit. Back flat to the wall, thighs level, hold there for twenty seconds.\n[0:58] Squats.',
  )
  expect(tell(aside).filter(({ returns }) => returns >= 2).length).toBe(2)
})

it.each([
  ['"and"', 'And rows. Pull, and lower.', 'Atd your rows. Pull, and lower.'],
  ['the name', 'And rows. Elbow close', 'And rowi. Elbow close'],
  ['the round', 'Last round. Squats', 'Latt round. Squats'],
])('a turn is found with a slip of one letter in %s', (_what, said, slipped) => {
  expect(PAIR).toContain(said)
  expect(tell(PAIR.replace(said, slipped)).map(({ returns }) => returns)).toEqual([3, 3])
})
