/** Words by which sets are told as they come: which one it is, or that one more follows. */

const NUMBER =
  '(?:\\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|\\w+teen|twelve|(?:twenty|thirty|forty|fifty|sixty)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?)'
const SET =
  '(?:sets?|lots?|go(?:es)?|rounds?|times?|batch(?:es)?|turns?|laps?|trips?|pass(?:es)?|helpings?|visits?|holds?|efforts?|reps?|ones?)'

/** One telling. `which` is an ordinal, `nth` the number of a set, `more` one more; `amount` is the number that is done in it, `still` how many more follow. */
export const GOES = new RegExp(
  [
    `(?:(?<!\\ba )|(?=\\w+ ${SET}\\b))\\b(?<which>second|2nd|third|3rd|fourth|4th|fifth|5th)(?: (?:and|or) (?:last|final))?(?: (?:${SET}|(?<of>${NUMBER}))\\b|'s\\b|(?=[,.:]))`,
    `\\b(?:set|lot|round|go|number) (?<nth>two|three|four|five|2|3|4|5)\\b`,
    `\\b(?<more>another|one more|(?:a|the|your|my) (?:last|other)|last|final|once more|one more time)(?: (?:${SET}|(?<amount>${NUMBER})))?\\b`,
    `\\b(?<again>(?:(?:and |that |it |them |those )(?:all )?again|same again|again please|(?:same|all of (?:that|it)) (?:pair |thing |lot |two |one )?again|round again))\\b`,
    `\\b(?<still>two|three|four|2|3|4) more (?:sets|lots|goes|rounds|times|turns|laps|trips|passes|helpings|visits)\\b`,
    `\\b(?<left>${NUMBER}|a minute|half a minute) more\\b(?! (?:of me|to go|than|seconds to))`,
  ].join('|'),
  'gi',
)

/** Every number, as it may stand for an amount. */
export const NUMBERS = new RegExp(`\\b${NUMBER}\\b`, 'gi')

/** Which one it is. */
export const WHICH: Readonly<Record<string, number>> = {
  ...{ second: 2, '2nd': 2, third: 3, '3rd': 3, fourth: 4, '4th': 4, fifth: 5, '5th': 5 },
  ...{ two: 2, three: 3, four: 4, five: 5, '2': 2, '3': 3, '4': 4, '5': 5 },
}
