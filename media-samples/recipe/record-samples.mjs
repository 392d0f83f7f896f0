/**
 * What SAMPLES.json says: how each file was made, its sum, and what the class holds on purpose, with times.
 *
 * Offers `buildRecord(folder, plan)`; `folder` holds the finished files.
 */
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { probe } from './run-ffmpeg.mjs'
import { classTitle, instructor } from './script.mjs'

const ours = 'MIT, as the rest of this project: words, drawing and code are our own invention'
const voiceLicence =
  'Voice cmu_us_slt_arctic_hts (Debian package festvox-us-slt-hts): copyright 2003 Carnegie Mellon University, free to use, change and pass on without restriction; parts of its build under the 3-clause BSD licence (HTS working group). Lettering: Cabin (Debian package fonts-cabin), SIL Open Font Licence 1.1.'

const files = [
  { file: 'steady-and-strong.mp4', step: 'class', licence: `${ours}. ${voiceLicence}` },
  { file: 'steady-and-strong.vtt', step: 'transcript', licence: ours },
  { file: 'steady-and-strong.txt', step: 'transcript', licence: ours },
  { file: 'small-class.mp4', step: 'small', licence: `${ours}. Lettering: Cabin, SIL Open Font Licence 1.1.` },
]

/** What the sentences marked in the script show; `why` is for the reader of the record. */
const features = {
  'routine-announced': 'the routine is announced before it starts',
  'caution-only-at-the-start': 'a caution that one exercise needs is said in the opening and nowhere else',
  'class-caution': 'a stop sign for the whole class',
  counting: 'counting aloud is not a dose',
  slip: 'a wrong start, taken again straight after',
  'dose-changed-later': 'a dose is corrected after two other exercises',
  'returned-to': 'an exercise is done again later',
  'no-dose': 'the work is asked for without any number',
  'right-side': 'the right side is taught and shown',
  'left-side': 'the left side is taught and shown',
  easier: 'an easier option',
  harder: 'a harder option',
  joke: 'talk with numbers in it that is about nothing',
}

/** Held back for members over sixty, and why; every other exercise has all it needs. */
const heldBack = [
  {
    exercise: 'Sit to stand',
    hazard: 'dizziness-rise',
    why: 'its caution is said in the opening, outside its own teaching',
  },
  { exercise: 'Seated twist', hazard: 'bone-health', why: 'its caution is never said' },
  { exercise: 'Calf stretch', hazard: null, why: 'no dose is said' },
]

export function buildRecord(folder, plan) {
  const exercises = listExercises(plan)
  const held = new Set(heldBack.map(({ exercise }) => exercise))
  return {
    note: 'How every sample was made, and what the demo class holds on purpose. Times are whole milliseconds from the start.',
    packages: ['ffmpeg', 'festival', 'festvox-us-slt-hts', 'fonts-cabin'],
    files: files.map((entry) => describeFile(folder, entry)),
    class: {
      title: classTitle,
      instructor: `${instructor} (invented)`,
      audience: ['older-adults'],
      mirrored: false,
      durationMs: plan.durationMs,
      exercises,
      ready: exercises.map(({ name }) => name).filter((name) => !held.has(name)),
      heldBack,
      planted: listPlanted(plan),
      missing: [{ exercise: 'Seated twist', hazard: 'bone-health', feature: 'a caution it needs is never said' }],
    },
  }
}

function describeFile(folder, { file, step, licence }) {
  const bytes = readFileSync(join(folder, file))
  return {
    file,
    made: `node media-samples/make-samples.mjs ${step}`,
    recipe:
      step === 'small'
        ? 'media-samples/recipe/render-small.mjs'
        : 'media-samples/recipe/script.mjs and the files it names',
    licence,
    durationMs: file.endsWith('.mp4') ? Math.round(Number(probe(join(folder, file)).format.duration) * 1000) : null,
    bytes: bytes.length,
    sha256: createHash('sha256').update(bytes).digest('hex'),
  }
}

/** Each exercise once, with its teaching, the places it comes back to, and the slip to leave out. */
function listExercises(plan) {
  const list = []
  for (const part of plan.parts) {
    if (!part.exercise) continue
    const said = plan.sentences.filter((sentence) => sentence.part === part.id)
    const span = { startMs: said[0].startMs, endMs: said.at(-1).endMs }
    const known = list.find(({ name }) => name === part.exercise)
    if (known) {
      known.alsoAt.push(span)
      continue
    }
    const slips = said.filter(({ plant }) => plant === 'slip')
    const after = said.find(({ plant, startMs }) => plant !== 'slip' && startMs > (slips.at(-1)?.startMs ?? -1))
    const cutOuts = slips.length > 0 ? [{ startMs: slips[0].startMs, endMs: after.startMs }] : []
    const named = said.find(({ plant }) => plant === 'name')
    const dose = said.find(({ plant }) => plant === 'dose')
    list.push({ name: part.exercise, ...span, namedAtMs: named.startMs, dose: dose?.text ?? null, alsoAt: [], cutOuts })
  }
  return list
}

function listPlanted(plan) {
  return plan.sentences
    .filter(({ plant }) => plant !== null && plant in features)
    .map(({ plant, part, exercise, startMs, endMs, text }) => ({
      feature: plant,
      shows: features[plant],
      exercise: plan.parts.find(({ id }) => id === part)?.exercise ?? exercise,
      startMs,
      endMs,
      text,
    }))
}
