/** Stops everything while the rights to the music heard are not known. */
import type { Rule } from '../rule.ts'

export const MUSIC_UNKNOWN: Rule = {
  id: 'music-unknown',
  why: 'Leave to play music in a class seldom covers a stored recording of it.',
  source: 'public performance and synchronisation are separate rights (from memory); local rules decide',
  waivable: false,
  find: ({ sheet }) => {
    if (sheet.music === 'unknown') {
      return [
        {
          severity: 'stop',
          segmentId: null,
          at: null,
          message:
            'The rights to the music heard are not known. Find out and set them, or take the sound from a file without music.',
        },
      ]
    }
    if (sheet.music === null) {
      return [
        {
          severity: 'note',
          segmentId: null,
          at: null,
          message: 'Nobody has said whether music is heard. Set music to none, own, licensed or unknown.',
        },
      ]
    }
    return []
  },
}
