/** What the checks say: findings, and each required caution with its state. */
import { z } from 'zod'
import { loose, said } from './loose.ts'
import { Ms } from './time.ts'

export const Severity = z.enum(['stop', 'warn', 'note'])
export type Severity = z.infer<typeof Severity>

/** One finding: what is wrong where, why it matters and who says so. */
export const Finding = loose({
  ruleId: z.string(),
  severity: Severity,
  segmentId: said(z.string()),
  /** The hazard that a finding about a caution is about; absent or null for all others. */
  hazard: z.string().nullish(),
  startMs: said(Ms),
  endMs: said(Ms),
  message: z.string(),
  why: z.string(),
  source: z.string(),
})
export type Finding = z.infer<typeof Finding>

/**
 * One caution an exercise needs (must, should) or that concerns some members (info).
 * spoken = said in the class; inClip = said inside what the clip keeps, or written on the lesson.
 */
export const CautionCoverage = loose({
  segmentId: z.string(),
  hazard: z.string(),
  ruleId: z.string(),
  level: z.enum(['must', 'should', 'info']),
  state: z.enum(['spoken', 'written', 'missing', 'waived']),
  inClip: z.boolean(),
  concerns: z.string(),
})
export type CautionCoverage = z.infer<typeof CautionCoverage>

export const CheckReport = loose({ findings: z.array(Finding), cautions: z.array(CautionCoverage) })
export type CheckReport = z.infer<typeof CheckReport>
