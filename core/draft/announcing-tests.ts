/** The phrases that bring a name, bear one or only drop it, each list as one test on plain words. */
import {
  BRINGS_BY_PLACE,
  BRINGS_NAME,
  CLOSES_WITH_NAME,
  NOT_TODAY,
  ONLY_PASSING,
  PASSING_AFTER,
  PASSING_BEFORE,
  PASSING_SENTENCE,
  SAID_AGAIN,
} from './words/en/announcing.ts'
import { anyPhrase } from './words/en/word-groups.ts'

export const BRINGS = anyPhrase(BRINGS_NAME)
export const BRINGS_AT_PLACE = anyPhrase(BRINGS_BY_PLACE)
export const CLOSES = anyPhrase(CLOSES_WITH_NAME)
export const PASSES_BEFORE = anyPhrase(PASSING_BEFORE)
export const ONLY_PASSES = anyPhrase(ONLY_PASSING)
export const PASSES_AFTER = anyPhrase(PASSING_AFTER)
export const PASSES = anyPhrase(PASSING_SENTENCE)
export const NOT_NOW = anyPhrase(NOT_TODAY)
export const AGAIN = anyPhrase(SAID_AGAIN)
