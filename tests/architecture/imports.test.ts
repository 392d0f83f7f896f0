// Who may import whom (the table of DEVELOPERS.md), held against every import of every source file.
import path from 'node:path'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { readProjectFile, sourceFiles } from '../helpers/source-files.ts'

interface Rule {
  /** Folder or file the rule speaks for; the longest that fits a file is the one that counts. */
  folder: string
  /** Folders of the project it may import; itself is always allowed. */
  mayImport: string[]
  packages: string[]
  node: boolean
}

const RULES: Rule[] = [
  { folder: 'shared', mayImport: [], packages: ['zod'], node: false },
  { folder: 'core', mayImport: ['shared'], packages: [], node: false },
  { folder: 'core/media/engine', mayImport: ['shared', 'core'], packages: ['ffmpeg-static'], node: true },
  {
    folder: 'server/actions',
    mayImport: [
      'shared',
      'core',
      'core/media/engine',
      'server/files',
      'server/setup',
      'server/storage',
      'server/store',
      'server/studio.ts',
    ],
    packages: ['zod'],
    node: true,
  },
  { folder: 'server/files', mayImport: ['shared'], packages: [], node: true },
  { folder: 'server/setup', mayImport: ['shared', 'core/media/engine'], packages: [], node: true },
  {
    folder: 'server/store',
    mayImport: ['shared', 'core', 'server/store/migrations'],
    packages: ['kysely', 'libsql', 'pg', 'zod'],
    node: true,
  },
  // History is frozen: a migration leans on nothing that can change.
  { folder: 'server/store/migrations', mayImport: [], packages: ['kysely'], node: false },
  { folder: 'server/storage', mayImport: ['shared'], packages: ['zod'], node: true },
  {
    folder: 'server/jobs',
    mayImport: [
      'shared',
      'core',
      'core/media/engine',
      'server/actions',
      'server/storage',
      'server/store',
      'server/studio.ts',
    ],
    packages: ['zod'],
    node: true,
  },
  { folder: 'server/settings.ts', mayImport: ['shared'], packages: ['zod'], node: true },
  {
    folder: 'server/studio.ts',
    mayImport: ['shared', 'core/media/engine', 'server/settings.ts', 'server/storage', 'server/store'],
    packages: [],
    node: true,
  },
  // What serves browsers: the door, its guards and its routes. Actions, jobs and the store know nothing of it.
  { folder: 'server/assets', mayImport: ['shared', 'server/setup', 'views/pages'], packages: ['esbuild'], node: true },
  { folder: 'server/render.ts', mayImport: ['views/pages'], packages: ['eta', 'express'], node: true },
  {
    folder: 'server/middleware',
    mayImport: ['shared', 'server/render.ts', 'server/store', 'views/pages'],
    packages: ['express', 'helmet', 'zod'],
    node: true,
  },
  {
    folder: 'server/routes',
    mayImport: [
      'shared',
      'core',
      'server/actions',
      'server/assets',
      'server/door.ts',
      'server/jobs',
      'server/middleware',
      'server/render.ts',
      'server/storage',
      'server/store',
      'server/studio.ts',
      'views/pages',
    ],
    packages: ['express', 'zod'],
    node: true,
  },
  {
    folder: 'server/door.ts',
    mayImport: ['server/assets', 'server/middleware', 'server/render.ts', 'server/setup', 'server/studio.ts'],
    packages: [],
    node: true,
  },
  {
    folder: 'server/app.ts',
    mayImport: ['server/door.ts', 'server/middleware', 'server/render.ts', 'server/routes'],
    packages: ['express'],
    node: false,
  },
  {
    folder: 'server/serve.ts',
    mayImport: ['shared', 'server/app.ts', 'server/door.ts', 'server/jobs', 'server/settings.ts', 'server/studio.ts'],
    packages: [],
    node: true,
  },
  {
    folder: 'server/cli',
    mayImport: [
      'shared',
      'core',
      'core/media/engine',
      'server/actions',
      'server/files',
      'server/serve.ts',
      'server/settings.ts',
      'server/setup',
      'server/studio.ts',
    ],
    packages: ['commander'],
    node: true,
  },
  { folder: 'views/pages', mayImport: ['shared'], packages: [], node: false },
  { folder: 'views/browser', mayImport: ['shared'], packages: ['tus-js-client'], node: false },
]

/** Single files with a package of their own. */
const ALLOWED_IN_FILE: Record<string, string[]> = {
  'core/captions/read-vtt.ts': ['webvtt-parser'],
  'core/media/engine/run-ffmpeg.ts': ['fluent-ffmpeg'],
  'server/files/read-zip.ts': ['yauzl'],
  'server/files/write-zip.ts': ['yazl'],
  'server/routes/uploads.ts': ['@tus/file-store', '@tus/server'],
}

const ruleOf = (file: string): Rule | undefined =>
  RULES.filter((rule) => file === rule.folder || file.startsWith(`${rule.folder}/`)).sort(
    (a, b) => b.folder.length - a.folder.length,
  )[0]

/** What is wrong with one import of a file, or null. */
function fault(file: string, specifier: string): string | null {
  const rule = ruleOf(file)
  if (!rule) return `${file}: no rule for this folder`
  if (specifier.startsWith('node:'))
    return rule.node ? null : `${file} imports ${specifier}, but ${rule.folder} has no Node`
  if (specifier.startsWith('.')) {
    const target = path.posix.normalize(path.posix.join(path.posix.dirname(file), specifier))
    const owner = ruleOf(target)?.folder ?? target
    if (owner === rule.folder || rule.mayImport.includes(owner)) return null
    return `${file} imports ${target}, but ${rule.folder} may not import ${owner}`
  }
  const name = specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/')
  if (rule.packages.includes(name) || ALLOWED_IN_FILE[file]?.includes(name)) return null
  return `${file} imports the package ${name}`
}

const importsOf = (text: string): string[] =>
  ts.preProcessFile(text, true, true).importedFiles.map((entry) => entry.fileName)

describe('imports', () => {
  const files = ['shared', 'core', 'server', 'views'].flatMap((folder) => sourceFiles(folder))

  it('finds the source files', () => {
    expect(files.length).toBeGreaterThan(20)
  })

  it('follow the table', () => {
    const faults = files.flatMap((file) => importsOf(readProjectFile(file)).map((specifier) => fault(file, specifier)))
    expect(faults.filter((text) => text !== null)).toEqual([])
  })

  it.each([
    ['core/draft/x.ts', "import fs from 'node:fs'"],
    ['core/draft/x.ts', "import { cutRecording } from '../../server/actions/cut-recording.ts'"],
    ['core/draft/x.ts', "import { probeFile } from '../media/engine/probe-file.ts'"],
    ['core/media/engine/x.ts', "import ffmpeg from 'fluent-ffmpeg'"],
    ['shared/x.ts', "import { a } from '../core/journey.ts'"],
    ['server/actions/x.ts', "import { main } from '../cli/main.ts'"],
    ['core/checks/x.ts', "import express from 'express'"],
    ['server/store/x.ts', "import { main } from '../actions/publish-class.ts'"],
    ['server/store/migrations/0001-x.ts', "import type { Edit } from '../../../shared/edit.ts'"],
    ['server/actions/x.ts', "import { render } from '../render.ts'"],
    ['server/store/x.ts', "import type { Studio } from '../studio.ts'"],
    ['views/pages/x.ts', "import { checkSheet } from '../../core/checks/check-sheet.ts'"],
    ['views/browser/x.ts', "import fs from 'node:fs'"],
    ['core/checks/x.ts', "const fs = await import('node:fs')"],
  ])('catch a planted fault in %s', (file, code) => {
    expect(importsOf(code).map((specifier) => fault(file, specifier))).toEqual([expect.any(String)])
  })
})
