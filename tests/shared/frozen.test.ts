// What outsiders build on is frozen at version 1: the schemas of our files and the meaning of exit codes.
// A new optional field or a new error code is fine (update the golden file and say so in the changelog);
// a changed or missing one needs a new version and a migration.
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { z } from 'zod'
import { CheckReport } from '../../shared/check-report.ts'
import { ERRORS } from '../../shared/errors.ts'
import { Lesson, Library } from '../../shared/lesson.ts'
import { Manifest } from '../../shared/manifest.ts'

const FILES = { manifest: Manifest, 'check-report': CheckReport, lesson: Lesson, library: Library }

it.each(Object.entries(FILES))('the schema of %s is as it was', async (name, schema) => {
  const text = `${JSON.stringify(z.toJSONSchema(schema, { io: 'input' }), null, 2)}\n`
  await expect(text).toMatchFileSnapshot(`../fixtures/golden/${name}.schema.json`)
})

it('every error code of version 1 is still there with its exit code', () => {
  const frozen = JSON.parse(
    readFileSync(new URL('../fixtures/golden/error-codes.json', import.meta.url), 'utf8'),
  ) as Record<string, number>
  const now = Object.fromEntries(Object.entries(ERRORS).map(([code, { exit }]) => [code, exit]))
  expect(now).toMatchObject(frozen)
})
