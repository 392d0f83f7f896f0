/** Words by which a class shows whom it is meant for. Source: the trade's everyday English, written for this product. */
import type { Audience } from '../../../../shared/log-sheet.ts'

export interface HeardWords {
  audience: Audience
  /** Words that say it outright; once is enough. */
  plain: RegExp
  /** Words that only point to it. */
  hints: RegExp
  /** So many hints are needed, of at least two different words. */
  least: number
  /** Where most sit, so many mentions of a chair and one hint are enough, too. */
  chairs?: number
}

export const HEARD_AUDIENCES: readonly HeardWords[] = [
  {
    audience: 'pregnancy',
    plain: /\b(?:prenatal|antenatal|pregnancy) (?:class|yoga|pilates|session|group|movement|mobility)\b/gi,
    hints: /\b(?:bumps?|trimesters?|midwife|midwives|pregnan\w+|the baby|your due date|antenatal|prenatal)\b/gi,
    least: 4,
  },
  {
    audience: 'rehab',
    plain:
      /\b(?:(?:knee|hip|back|shoulder|ankle|ortho) (?:class|clinic|rehab)|rehab(?:ilitation)? (?:class|group|session)|post[- ]op (?:class|group))\b/gi,
    hints:
      /\b(?:operated|operations?|surgeons?|surgery|physio(?:therapists?|therapy)?|rehab|crutch(?:es)?|new knees?|knee replacement|the wound|your scar|stitches|consultant|post[- ]op|discharged?|swelling|swollen|replacements?|(?:had|your|an|the|since|after) op|flare(?:s|d)?[- ]?up|on the way back|(?:sore|bad|dodgy|injured|affected) (?:arms?|legs?|sides?|shoulders?|knees?|hips?|elbows?|wrists?|hands?|ankles?|one|ones))\b/gi,
    least: 5,
  },
  {
    audience: 'older-adults',
    plain:
      /\b(?:over[- ](?:60|65|70|sixties|seventies)s?\b|older adults|senior citizens|seniors'? (?:class|group|fitness|center|centre)|(?:who's|has|have|you've|we've|i've) had a fall|(?:frightened|scared|afraid) of (?:having one|falling|a fall)|steady on (?:your|our) feet)/gi,
    hints:
      /\b(?:over sixty|osteoporosis|osteopenia|thin bones|bones (?:are|is) thin|brittle bones|blood pressure tablets|new hips?|hip replacement|at (?:our|your) age|grand(?:children|kids|sons?|daughters?)|bus pass|pension(?:er|ers)?|walking frame|zimmer|hearing aids?|falls (?:clinic|prevention|group)|glaucoma|cataracts?|i(?:'m| am) (?:sixty|seventy|eighty)(?:[- ]\w+)?|broken? (?:this|my|a|her|his) (?:wrist|hip))\b/gi,
    least: 4,
    chairs: 10,
  },
]
