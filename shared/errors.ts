/** Errors: one table of codes, one class. A code names the cause; the message says what to do. */

/** Every error code: what it means, and the exit code of the command line:
 * 2 = the input is bad, 3 = this machine or this program cannot do it. (1 is not an error: stops stand, or a clip failed.) */
export const ERRORS = {
  // command line and files
  usage: { exit: 2, means: 'The command was called with words it does not know.' },
  'file-missing': { exit: 2, means: 'A named file is not there or cannot be read.' },
  'file-empty': { exit: 2, means: 'A named file is empty.' },
  'file-too-big': { exit: 2, means: 'A text file is larger than its reader accepts.' },
  'file-not-text': { exit: 2, means: 'A text file is not UTF-8 text.' },
  'out-not-writable': { exit: 2, means: 'The output place cannot be written.' },
  // transcript
  'transcript-unknown': { exit: 2, means: 'No transcript form fits the text.' },
  'transcript-line': { exit: 2, means: 'A line of a transcript breaks the rules of its form.' },
  'transcript-order': { exit: 2, means: 'The time stamps of a transcript go back.' },
  'transcript-not-timed': { exit: 2, means: 'A timed transcript is needed here and a class plan was given.' },
  // log sheet
  'sheet-not-json': { exit: 2, means: 'The log sheet is not JSON.' },
  'sheet-not-a-sheet': { exit: 2, means: 'The JSON is not a log sheet.' },
  'sheet-newer': { exit: 2, means: 'The log sheet is of a newer version than this program reads.' },
  'sheet-field': { exit: 2, means: 'A field of the log sheet has a wrong value.' },
  'sheet-spans': { exit: 2, means: 'Spans or cut-outs of the log sheet cannot be cut.' },
  'sheet-recording': { exit: 2, means: 'The log sheet was marked on another recording.' },
  'edit-target': { exit: 2, means: 'An edit names something that is not on the sheet.' },
  'edit-invalid': { exit: 2, means: 'An edit would break the sheet.' },
  // recording
  'recording-empty': { exit: 2, means: 'The recording is an empty file.' },
  'recording-format': { exit: 2, means: 'The file is not a recording of an accepted format.' },
  'recording-broken': { exit: 2, means: 'The recording is cut short or damaged.' },
  'recording-no-picture': { exit: 2, means: 'The recording has no picture.' },
  'recording-no-sound': { exit: 2, means: 'The recording has no sound.' },
  'sound-not-matching': { exit: 2, means: 'Sound recorded apart does not belong to the recording.' },
  // store
  'not-allowed': { exit: 2, means: 'The person may not do this.' },
  'row-missing': { exit: 2, means: 'What was asked for is not in the store.' },
  'lesson-withdrawn': { exit: 2, means: 'A lesson was taken from the members.' },
  'row-exists': { exit: 2, means: 'The store holds such a thing already, and there can be only one.' },
  'row-changed': { exit: 2, means: 'Someone else changed the same thing meanwhile.' },
  'sheet-conflict': { exit: 2, means: 'The sheet has moved on, and an edit made on an older one no longer fits.' },
  'edit-reused': { exit: 2, means: 'Two different edits carry the same opId.' },
  'job-lost': { exit: 3, means: 'A job was taken from the worker that reports on it.' },
  'store-text': { exit: 2, means: 'A text holds a character that the store cannot keep.' },
  'store-open': { exit: 3, means: 'The store cannot be opened.' },
  'store-missing': { exit: 2, means: 'There is no studio in the named folder.' },
  'store-newer': { exit: 3, means: 'The store was written by a newer version of this program.' },
  'store-damaged': { exit: 3, means: 'A row of the store cannot be read.' },
  'store-busy': { exit: 3, means: 'Another process kept the store locked for too long.' },
  'store-backup': { exit: 3, means: 'A backup of the store cannot be written.' },
  'archive-wrong': { exit: 2, means: 'An export or a backup is damaged, or is none.' },
  // the studio's door
  'setting-wrong': { exit: 2, means: 'A setting cannot be used.' },
  'second-reader': { exit: 3, means: 'The second reader did not answer in time, in size or in form.' },
  'port-busy': { exit: 3, means: 'No port is free to listen on.' },
  'assets-broken': { exit: 3, means: 'The scripts and styles of the pages cannot be built.' },
  'page-missing': { exit: 2, means: 'There is no page at this address.' },
  'request-wrong': { exit: 2, means: 'A request says something that it may not say.' },
  'request-host': { exit: 2, means: 'A request calls the studio by a name that is not its own.' },
  'request-origin': { exit: 2, means: 'A change was sent from elsewhere than a page of the studio.' },
  'request-token': { exit: 2, means: 'A change was sent without the token of its session.' },
  'request-type': { exit: 2, means: 'The body of a request is of a kind that is not read here.' },
  'request-too-big': { exit: 2, means: 'The body of a request is larger than it may be.' },
  'request-slow': { exit: 2, means: 'A request took too long to arrive.' },
  'request-outdated': { exit: 2, means: 'A request holds only for an older version of what it asks for.' },
  'range-outside': { exit: 2, means: 'A request asks for bytes past the end of a file.' },
  'streams-too-many': { exit: 2, means: 'One browser follows more events at once than it may.' },
  // engine
  'ffmpeg-missing': { exit: 3, means: 'No usable ffmpeg and ffprobe was found.' },
  'ffmpeg-too-old': { exit: 3, means: 'ffmpeg is older than 5.1.' },
  'ffmpeg-lacks': { exit: 3, means: 'ffmpeg lacks a codec, filter or muxer that is needed.' },
  'engine-failed': { exit: 3, means: 'ffmpeg ended with an error.' },
  'engine-timeout': { exit: 3, means: 'ffmpeg ran longer than it may.' },
  'engine-cancelled': { exit: 3, means: 'The work was cancelled.' },
  'engine-too-big': { exit: 3, means: 'An output grew larger than it may.' },
  'disk-full': { exit: 3, means: 'The disk is full.' },
  'clip-wrong': { exit: 3, means: 'A cut clip is not what the plan says.' },
  'postgres-missing': { exit: 3, means: 'PostgreSQL, which the tests of the store need, was not found.' },
  'browser-missing': { exit: 3, means: 'No Chromium or Chrome was found for the tests.' },
  internal: { exit: 3, means: 'A fault of this program.' },
} as const satisfies Record<string, { exit: 2 | 3; means: string }>

export type ErrorCode = keyof typeof ERRORS

/** A stop: a code from the table, a sentence that says what to do, and the first error as cause. */
export class AppError extends Error {
  readonly code: ErrorCode
  /** Further facts in whole lines, such as each bad line of a file or ffmpeg's last words. */
  readonly details: readonly string[]

  constructor(code: ErrorCode, message: string, options: { details?: readonly string[]; cause?: unknown } = {}) {
    super(message, options.cause === undefined ? undefined : { cause: options.cause })
    this.name = 'AppError'
    this.code = code
    this.details = options.details ?? []
  }

  get exitCode(): 2 | 3 {
    return ERRORS[this.code].exit
  }
}
