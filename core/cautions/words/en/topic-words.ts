/**
 * What a cue that is plainly a warning (or a fault to avoid) speaks of, by a word or two: it then covers the hazard, however
 * it is worded. Only for cues of the kinds named; source: the trade's everyday English, written for this product.
 */
import type { CueKind } from '../../../../shared/log-sheet.ts'
import type { HazardSlug } from '../../hazard-slugs.ts'

export interface Topic {
  kinds: readonly CueKind[]
  says: readonly string[]
}

export const TOPICS: Partial<Record<HazardSlug, Topic>> = {
  'neck-pull': { kinds: ['caution', 'fault'], says: ['neck|necks'] },
  'inverted-head-down': { kinds: ['caution'], says: ['head|eyes|glaucoma|blood_pressure|upside_down'] },
  'loaded-spinal-flexion': {
    kinds: ['caution', 'fault'],
    says: ['your_back|the_back|that_back|spine|rounding|rounded|rounds'],
  },
  'knee-tracking': {
    kinds: ['caution', 'fault'],
    says: [
      'knee|knees|kneecap|kneecaps & in|inwards|inside|line|cave*|wobble*|drift*|dive*',
      'knee|knees|kneecap .. over|with|towards .. toe|toes|laces|foot',
    ],
  },
  'knee-torsion': { kinds: ['caution', 'fault'], says: ['knee|knees'] },
  'lumbar-extension': { kinds: ['caution', 'fault'], says: ['back|spine'] },
  'overhead-shoulder': { kinds: ['caution'], says: ['shoulder|shoulders|overhead'] },
  'impact-landing': {
    kinds: ['caution', 'fault'],
    says: [
      'impact|shins|achilles|bounce|bouncing|jumping|ankles|pelvic_floor',
      'land* & soft*|quiet*|light*|hard|heavy|loud|heel|bend*|bent',
    ],
  },
  'surface-check': {
    kinds: ['caution'],
    says: ['ground|grass|wet|slip*|kerb|holes|puddle*|underfoot|footing|roots|stones|ice|icy|path'],
  },
  'overexertion-stop': { kinds: ['caution'], says: ['{dizzy}|sick|chest|breathless|unwell|talk'] },
  'warm-first': { kinds: ['caution'], says: ['warm*|cold|build'] },
  'anchor-check': { kinds: ['caution'], says: ['tug|anchor|strap|straps|buckle|buckles|door|knot|hook|rings|yank'] },
  'band-recoil': {
    kinds: ['caution'],
    says: ['ping*|snap*|nick*|split|face|eye|eyes|chin|teeth', 'slip* & foot|feet|shoe|arch|toes'],
  },
  'clear-space': { kinds: ['caution'], says: ['space|room|around|behind|in_front'] },
  'spotter-or-safeties': { kinds: ['caution'], says: ['spotter|safet*|pins|arms|bail|stuck'] },
  'safe-dismount': {
    kinds: ['caution'],
    says: ['drop*|let_go|jump*|step|box|down|off & feet|foot|floor|box|hands|down|off|ground'],
  },
  'fall-risk': { kinds: ['caution', 'easier'], says: ['{support}', 'hold|hang_on|wobbl*|balance'] },
  'dizziness-rise': { kinds: ['caution'], says: ['{dizzy}|head|room'] },
  'bone-health': { kinds: ['caution'], says: ['bone|bones|osteo*|fracture*'] },
  'pain-stop': { kinds: ['caution'], says: ['pain*|hurt*|sharp|sore|{stop}'] },
  coning: { kinds: ['caution'], says: ['dom*|cone*|coning|belly|tummy'] },
  overstretch: { kinds: ['caution', 'range'], says: ['stretch*|short|ligament*|joints'] },
  'pelvic-girdle-pain': { kinds: ['caution'], says: ['pelvis|pubic|click*|front'] },
}
