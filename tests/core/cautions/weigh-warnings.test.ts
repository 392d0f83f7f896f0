// What a sentence warns of, by all its words: fitted on annotated classes, held here to sentences of our own and to the words that
// the annotation of the classes kept apart names (none was fitted on).
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { hazardsIn } from '../../../core/cautions/find-hazards.ts'
import { warningFeatures, warningsBy, warningsIn, warningTable } from '../../../core/cautions/weigh-warnings.ts'

const APART = path.join(import.meta.dirname, '../../fixtures/corpus/apart')

/** The words that satisfy a required caution, with its hazard. */
const told = readdirSync(APART).flatMap((name) => {
  const { cautionEvidence = [] } = JSON.parse(readFileSync(path.join(APART, name, 'extra.json'), 'utf8')) as {
    cautionEvidence?: { reason: string; evidence: string }[]
  }
  return Array.isArray(cautionEvidence) ? cautionEvidence.filter(({ evidence }) => evidence) : []
})
const quotes = [...new Map(told.map((one) => [`${one.reason} ${one.evidence}`, one])).values()]

describe('what a sentence warns of by its words', () => {
  it.each([
    ['Your knee points where your toes point, all the way down.', ['knee-tracking']],
    ['Check the buckles and pull on both straps before you hang.', ['anchor-check']],
    ['If it gets sharp in the joint, come out of it and tell me.', ['pain-stop']],
    ['Keep a hand on the rail the whole time.', ['fall-risk']],
    ["Step down off the rings, don't drop.", ['safe-dismount']],
    ["My sister's kitchen has a new floor.", []],
    ['Ten more and then we rest.', []],
    ["Good, that's lovely, keep going.", []],
    ['', []],
  ])('%s', (text, hazards) => expect(warningsIn(text)).toEqual(hazards))

  it('is heard where no phrase holds it, in a third of what phrases miss', () => {
    expect(quotes.length).toBeGreaterThan(80)
    const missed = quotes.filter(({ reason, evidence }) => !hazardsIn(evidence).some((one) => one === reason))
    const heard = missed.filter(({ reason, evidence }) => warningsIn(evidence).some((one) => one === reason))
    expect(heard.length / missed.length).toBeGreaterThan(1 / 3)
  })

  it('adds up the words of a table, in whatever order they are said', () => {
    const table = warningTable([
      [
        'knee-tracking',
        [
          [2, 'knee|toe'],
          [-3, '*'],
        ],
      ],
    ])
    expect(warningsBy('Toes and knees.', table, 0)).toEqual(['knee-tracking'])
    expect(warningsBy('Knees, knees.', table, 0)).toEqual([])
  })

  it('takes all numbers for one, and pairs of words in their order', () => {
    expect([...warningFeatures('Past 4, stop.')]).toEqual(['*', 'past', '0', 'stop', 'past 0', '0 stop'])
  })
})
