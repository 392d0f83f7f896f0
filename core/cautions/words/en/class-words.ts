/** How titles name an audience, and how sheets and set-up words name a position. */
import type { Movement, Position } from '../../../catalogue/entry.ts'
import type { Audience } from '../../../../shared/log-sheet.ts'
import type { Sign } from './sign-words.ts'

/** Words of a title, in the phrase language of `../match-phrase.ts`. */
export const AUDIENCE_WORDS: readonly { audience: Audience; says: readonly string[] }[] = [
  { audience: 'pregnancy', says: ['pregnan*|prenatal|antenatal|pre_natal|ante_natal|bump|trimester'] },
  { audience: 'after-birth', says: ['postnatal|post_natal|postpartum|after_birth|after_the_baby|new_mums'] },
  {
    audience: 'older-adults',
    says: [
      'older_adults|seniors|senior|over_60s|over_65s|over_70s|over_sixties|over_seventies|golden_years|later_life',
    ],
  },
  { audience: 'rehab', says: ['rehab|rehabilitation|physio|physiotherapy|after_surgery|post_op|recovery_class'] },
  { audience: 'juniors', says: ['juniors|children|kids|teens|under_18s'] },
  { audience: 'beginners', says: ['beginner|beginners|basics|first_steps'] },
]

/** The words a sheet may hold as a position (plain, singular), and the catalogue's word. */
export const POSITION_SAYINGS: readonly (readonly [string, Position])[] = [
  ['standing', 'standing'],
  ['stood', 'standing'],
  ['single leg', 'single-leg'],
  ['one leg', 'single-leg'],
  ['seated', 'seated'],
  ['sitting', 'seated'],
  ['supine', 'supine'],
  ['lying', 'supine'],
  ['on the back', 'supine'],
  ['prone', 'prone'],
  ['on the front', 'prone'],
  ['side lying', 'side-lying'],
  ['all four', 'all-fours'],
  ['quadruped', 'all-fours'],
  ['hands and knee', 'all-fours'],
  ['kneeling', 'kneeling'],
  ['half kneeling', 'half-kneeling'],
  ['hand supported', 'hands-supported'],
  ['forearm supported', 'forearm-supported'],
  ['hanging', 'hanging'],
  ['inverted', 'head-below-heart'],
  ['head below heart', 'head-below-heart'],
]

/** What words of set-up and movement say of the position, for exercises that nothing else tells of. */
export const SETUP_POSITIONS: readonly (readonly [Sign, Position])[] = [
  ['seated', 'seated'],
  ['on-back', 'supine'],
  ['on-front', 'prone'],
  ['on-side', 'side-lying'],
  ['on-all-fours', 'all-fours'],
  ['one-knee-down', 'half-kneeling'],
  ['on-one-leg', 'single-leg'],
  ['jumps', 'standing'],
]

/** What words of the movement show of an exercise that no catalogue holds, where all of the signs are there: where the body is. */
export const SHOWN_POSITIONS: readonly (readonly [readonly Sign[], Position])[] = [
  [['jumps'], 'standing'],
  [['hips-back'], 'standing'],
  [['bar-off-floor'], 'standing'],
  [['bar-on-back'], 'standing'],
  [['up-on-toes'], 'standing'],
  [['rises-from-seat'], 'standing'],
  [['at-seat-front', 'stands-up'], 'standing'],
  [['sits-deep'], 'standing'],
  [['narrow-stance'], 'standing'],
  [['on-one-leg'], 'single-leg'],
  [['one-foot-off'], 'single-leg'],
]

/** The same: what moves. */
export const SHOWN_MOVEMENTS: readonly (readonly [readonly Sign[], Movement])[] = [
  [['jumps'], 'jump'],
  [['hips-back'], 'hinge'],
  [['bar-off-floor'], 'hinge'],
  [['sits-deep'], 'squat'],
  [['bar-on-back'], 'squat'],
  [['drops-a-knee'], 'lunge'],
  [['rises-from-seat'], 'sit-to-stand'],
  [['at-seat-front', 'stands-up'], 'sit-to-stand'],
  [['up-on-toes'], 'heel-raise'],
  [['steps-up'], 'step'],
  [['steps-out'], 'step'],
  [['narrow-stance'], 'balance'],
  [['makes-circles', 'one-foot-off'], 'circles'],
  [['presses-overhead'], 'overhead'],
  [['trunk-turns'], 'spine-rotation'],
  [['folds-forward', 'seated'], 'spine-flexion'],
  [['curls-up', 'on-back'], 'curl-up'],
  [['rows', 'hips-back'], 'pull'],
  [['runs'], 'run'],
]
