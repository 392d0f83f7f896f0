// The installed ffmpeg has every part that our commands need, and a list that lacks one is told.
import { chmod, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { checkCapabilities } from '../../core/media/engine/check-capabilities.ts'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { FFMPEG } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

it('finds every needed part in the ffmpeg of this machine', async () => {
  const parts = await checkCapabilities(await findFfmpeg())
  expect(parts.filter((part) => !part.present)).toEqual([])
  expect(parts.length).toBeGreaterThan(30)
})

it('tells which part is not there', async () => {
  const script = join(await tempFolder(), 'ffmpeg')
  await writeFile(script, `#!/bin/sh\n"${FFMPEG}" "$@" | grep -v -e libx264 -e bwdif\n`)
  await chmod(script, 0o755)
  const parts = await checkCapabilities({ ...(await findFfmpeg()), ffmpeg: script })
  expect(parts.filter((part) => !part.present).map(({ name }) => name)).toEqual(['libx264', 'bwdif'])
})

it('is an error when ffmpeg does not answer', async () => {
  const broken = { ...(await findFfmpeg()), ffmpeg: '/bin/false' }
  await expect(checkCapabilities(broken)).rejects.toMatchObject({ name: 'AppError', code: 'engine-failed' })
})
