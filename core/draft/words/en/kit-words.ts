/** Words that show which kit is used, one kind of kit a line. Weight: how much one naming says. */
export const CLASS_KIT: readonly { kit: string; words: RegExp; weight: number }[] = [
  { kit: 'kettlebell', words: /\b(?:kettle ?bells?|(?<!dumb|bar)bells?)\b/gi, weight: 1 },
  { kit: 'dumbbell', words: /\b(?:dumb ?bells?|hand weights?|light weights?|weights)\b/gi, weight: 1 },
  { kit: 'barbell', words: /\b(?:barbells?|the bar|collars|squat rack|bench press|plates)\b/gi, weight: 1 },
  { kit: 'band', words: /\b(?:bands?|tubing|loop band)\b/gi, weight: 1 },
  { kit: 'rings', words: /\b(?:rings?|straps)\b/gi, weight: 1 },
  { kit: 'rowing machine', words: /\b(?:rower|rowing machine|erg|rowing|strokes?|slide|footplate)\b/gi, weight: 0.5 },
  { kit: 'chair', words: /\b(?:chairs?|seated|sit tall|front of the seat)\b/gi, weight: 0.5 },
  { kit: 'mat', words: /\b(?:mats?)\b/gi, weight: 0.5 },
  { kit: 'step', words: /\b(?:the step|step box|stair|bottom step)\b/gi, weight: 1 },
  { kit: 'bench', words: /\b(?:bench)\b/gi, weight: 0.5 },
  { kit: 'ball', words: /\b(?:birth ball|exercise ball|gym ball|the ball|your ball|medicine ball)\b/gi, weight: 1 },
  { kit: 'wall', words: /\b(?:the wall|a wall)\b/gi, weight: 0.5 },
  { kit: 'towel', words: /\b(?:towels?)\b/gi, weight: 0.5 },
  { kit: 'blocks', words: /\b(?:blocks?|bricks?)\b/gi, weight: 0.5 },
  { kit: 'cushion', words: /\b(?:cushions?|pillows?|bolsters?)\b/gi, weight: 0.5 },
]
