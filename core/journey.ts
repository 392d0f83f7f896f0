/** The whole road as one list of steps: start reading here. Each step names the value it takes, the value it gives, and its folder. */

export interface Step {
  name: string
  takes: string
  gives: string
  /** Where the step is decided, and, for steps that act, where it is done. */
  decided: string
  done: string | null
}

export const JOURNEY = [
  {
    name: 'recording',
    takes: 'a filmed class',
    gives: 'Probe, frame times, loudness',
    decided: 'core/media',
    done: 'core/media/engine',
  },
  {
    name: 'transcript',
    takes: 'text of the class',
    gives: 'Transcript or ClassPlan',
    decided: 'core/transcript',
    done: null,
  },
  { name: 'draft', takes: 'Transcript', gives: 'LogSheet of proposals', decided: 'core/draft', done: null },
  { name: 'dose', takes: 'words', gives: 'Prescription', decided: 'core/dose', done: null },
  { name: 'segments', takes: 'LogSheet and Edit', gives: 'LogSheet', decided: 'core/segments', done: null },
  {
    name: 'cautions',
    takes: 'Segment and audience',
    gives: 'cautions required and covered',
    decided: 'core/cautions',
    done: null,
  },
  { name: 'checks', takes: 'LogSheet', gives: 'CheckReport', decided: 'core/checks', done: null },
  {
    name: 'cut',
    takes: 'recording and LogSheet',
    gives: 'clips and Manifest',
    decided: 'core/media',
    done: 'server/actions/cut-recording.ts',
  },
  { name: 'captions', takes: 'Transcript and kept ranges', gives: 'WebVTT', decided: 'core/captions', done: null },
  {
    name: 'chapters',
    takes: 'LogSheet or Segment',
    gives: 'WebVTT, ffmetadata, description',
    decided: 'core/chapters',
    done: null,
  },
  {
    name: 'library',
    takes: 'clips, captions, CheckReport',
    gives: 'Lessons',
    decided: 'core/library',
    done: 'server/actions/publish-class.ts',
  },
] as const satisfies readonly Step[]
