/** How a coach breaks off and starts again. Plain words, as plainWords gives them. */
export const RETAKES = [
  'let me (?:start|say|do|show|try|take) (?:that|this|it|you that|you)? ?(?:one )?again|let me start (?:again|over)|ill (?:start|do|say) (?:that|this|it) again|start (?:that|this|it) again|start over|start again',
  'scrap that|forget that|ignore that|take two|wrong (?:leg|arm|side|foot|way|exercise|one) sorry|sorry wrong (?:leg|arm|side|foot|way|exercise|one)|ill do that again|do that bit again|cut that',
]
