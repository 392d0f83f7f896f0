/** The files of a lesson: their names in addresses, their types, and their keys in the storage. */

/** Name in the address, `/lessons/<slug>/<name>`, to name in the storage. */
export const LESSON_FILES = {
  'clip.mp4': { stored: 'clip.mp4', type: 'video/mp4' },
  'poster.jpg': { stored: 'poster.jpg', type: 'image/jpeg' },
  'start.jpg': { stored: 'start.jpg', type: 'image/jpeg' },
  'end.jpg': { stored: 'end.jpg', type: 'image/jpeg' },
  'captions.en.vtt': { stored: 'captions.vtt', type: 'text/vtt; charset=utf-8' },
  'chapters.vtt': { stored: 'chapters.vtt', type: 'text/vtt; charset=utf-8' },
} as const
export type LessonFile = keyof typeof LESSON_FILES
export const LESSON_FILE_NAMES = Object.keys(LESSON_FILES) as [LessonFile, ...LessonFile[]]

/** Where the storage keeps a file of one version of a lesson. Versions never share a key, so that a file never changes. */
export function lessonFileKey(lessonId: string, version: number, file: LessonFile): string {
  return `lessons/${lessonId}/${String(version)}/${LESSON_FILES[file].stored}`
}
