/** The lists of phrases that the dose patterns name in <angle brackets>. */
import { MANNER_LISTS } from './lists-manner.ts'
import { TEMPO_LISTS } from './lists-tempo.ts'
import { MOVE_LISTS } from './lists-moves.ts'
import { WORK_LISTS } from './lists-work.ts'

export const LISTS = { ...MOVE_LISTS, ...WORK_LISTS, ...MANNER_LISTS, ...TEMPO_LISTS } as const
