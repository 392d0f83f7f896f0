// Cuts a sheet in a process of its own, for tests that kill it. Prints one line for each report of progress.
// Arguments: folder of the compiled program, recording, log sheet, out folder.
import { readFileSync } from 'node:fs'
import { pathToFileURL } from 'node:url'

const [built, recordingPath, sheetPath, outDir] = process.argv.slice(2)
const load = (path) => import(pathToFileURL(`${built}/${path}`).href)
const { cutRecording } = await load('server/actions/cut-recording.js')
const { readLogSheet } = await load('shared/read-log-sheet.js')

await cutRecording({
  recordingPath,
  sheet: readLogSheet(readFileSync(sheetPath, 'utf8')),
  outDir,
  jobs: 2,
  onProgress: ({ kind, percent }) => console.log(`${kind} ${percent}`),
})
