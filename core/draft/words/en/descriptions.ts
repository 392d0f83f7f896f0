/** What coaches say instead of a name: the movement itself. One description a line, and the entry it stands for. */
export const DESCRIPTIONS: readonly { pattern: RegExp; id: string }[] = [
  {
    pattern: /circles? with (?:your|the) hips|circle (?:your|the) hips|hips round in (?:a )?(?:big )?circles?/i,
    id: 'hip-circle',
  },
  {
    pattern:
      /(?:knees|them both|them) (?:fall|drop|roll|lower|flop) (?:over )?to (?:one|the|your) (?:side|left|right)/i,
    id: 'supine-twist',
  },
  {
    pattern: /like (?:a|you're carrying a|you are carrying a) suitcase|hold it (?:by|at) your side and walk/i,
    id: 'suitcase-carry',
  },
  { pattern: /(?:one|a) weight in each hand and walk/i, id: 'farmers-carry' },
  { pattern: /sit (?:your (?:hips|bottom) )?back (?:on|onto|to|towards) your heels/i, id: 'childs-pose' },
  {
    pattern: /circle (?:your|the|one) (?:ankles?|foot|feet)|draw circles with your (?:toes|foot|feet)/i,
    id: 'ankle-circle',
  },
  { pattern: /roll (?:your|the) shoulders (?:back|forward|round|up)/i, id: 'shoulder-circle' },
  { pattern: /circle (?:your|the) arms|big circles with (?:your|the) arms/i, id: 'arm-circle' },
  {
    pattern:
      /(?:take|drop|let|tip) (?:your )?(?:right |left )?ear (?:down )?(?:to|towards) (?:your|the) (?:right |left )?shoulder/i,
    id: 'neck-side-tilt',
  },
  {
    pattern: /(?:look|turn your head) (?:slowly )?(?:over|to look over) your (?:left|right|one)? ?shoulder/i,
    id: 'neck-turn',
  },
  {
    pattern: /hug (?:both |your |one |the )?knees? (?:in|into|to) (?:to )?(?:your )?(?:chest|you)/i,
    id: 'knees-to-chest',
  },
  {
    pattern: /reach (?:one|your right|your left|that) (?:arm|hand) (?:up and )?over to (?:the|one) side/i,
    id: 'side-reach',
  },
  { pattern: /(?:take|catch|get) hold of (?:your|one) (?:foot|ankle) behind you/i, id: 'quad-stretch' },
  { pattern: /stand on (?:one|your right|your left) leg(?: and| for|,|$)/i, id: 'single-leg-stand' },
  { pattern: /one foot (?:straight |right )?in front of the other, heel to toe/i, id: 'tandem-stand' },
  { pattern: /march(?:ing)? on the spot/i, id: 'knee-lift' },
  { pattern: /(?:rise|come|lift) (?:up )?(?:onto|on to) (?:your|the) (?:tip)?toes/i, id: 'heel-raise' },
  {
    pattern: /cross (?:one|your right|your left) ankle over the (?:other|opposite) (?:thigh|knee)/i,
    id: 'glute-stretch',
  },
  { pattern: /walk your hands (?:out|forward) (?:in)?to a plank/i, id: 'walkout' },
  { pattern: /bring one arm across your (?:chest|body)/i, id: 'shoulder-stretch' },
]
