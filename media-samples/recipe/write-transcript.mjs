/**
 * The demo class's transcript as text. Offers `writeVtt` (one WebVTT cue a sentence) and `writeBlocks` ("[m:ss] text" lines).
 * Both take planned sentences: { startMs, endMs, text }, in order.
 */

/** A block of the plain transcript is closed once it has lasted this long, in ms. */
const blockMs = 17000

export function writeVtt(sentences) {
  const cues = sentences.map(({ startMs, endMs, text }) => `${stamp(startMs)} --> ${stamp(endMs)}\n${text}\n`)
  return ['WEBVTT\n', ...cues].join('\n')
}

export function writeBlocks(sentences) {
  const blocks = []
  for (const sentence of sentences) {
    const open = blocks.at(-1)
    if (open && sentence.startMs - open.startMs < blockMs) open.texts.push(sentence.text)
    else blocks.push({ startMs: sentence.startMs, texts: [sentence.text] })
  }
  return blocks.map(({ startMs, texts }) => `[${shortStamp(startMs)}] ${texts.join(' ')}\n`).join('')
}

function stamp(ms) {
  const pad = (value, length = 2) => String(value).padStart(length, '0')
  const seconds = Math.floor(ms / 1000)
  return `${pad(Math.floor(seconds / 3600))}:${pad(Math.floor(seconds / 60) % 60)}:${pad(seconds % 60)}.${pad(ms % 1000, 3)}`
}

/** m:ss, rounded down to the second. */
function shortStamp(ms) {
  const seconds = Math.floor(ms / 1000)
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`
}
