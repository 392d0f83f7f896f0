// Facts about the project as a whole: its top level, its lock file, its documents.
import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { ERRORS } from '../../shared/errors.ts'
import { projectRoot, readProjectFile, sourceFiles } from '../helpers/source-files.ts'

interface LockEntry {
  version?: string
  resolved?: string
}
const lock = JSON.parse(readProjectFile('package-lock.json')) as { packages: Record<string, LockEntry> }
const manifest = JSON.parse(readProjectFile('package.json')) as Record<string, Record<string, string>>

describe('the top level', () => {
  it('holds the agreed names only', () => {
    const agreed = [
      'README.md',
      'DEVELOPERS.md',
      'package.json',
      'tsconfig.json',
      'server',
      'core',
      'views',
      'media-samples',
      'tests',
      'shared',
      'package-lock.json',
      'LICENSE',
    ]
    const notCommitted = ['node_modules', 'data', 'coverage']
    const names = readdirSync(projectRoot).filter((name) => !name.startsWith('.') && !notCommitted.includes(name))
    expect(names.filter((name) => !agreed.includes(name))).toEqual([])
  })
})

describe('the lock file', () => {
  const entries = Object.entries(lock.packages)

  it('names no registry address', () => {
    const fromRegistry = entries.filter(([, entry]) => entry.resolved?.startsWith('http'))
    expect(fromRegistry.map(([name]) => name)).toEqual([])
    expect(readProjectFile('.npmrc')).toMatch(/^omit-lockfile-registry-resolved=true$/m)
  })

  it.each(['linux-x64-gnu', 'linux-arm64-gnu', 'darwin-arm64', 'win32-x64-msvc'])('covers %s', (platform) => {
    const native = entries.filter(([name]) => name.includes('binding-') || name.includes('canvas-'))
    const families = new Set(native.map(([name]) => name.replace(/(binding|canvas)-.*/, '$1')))
    const covered = new Set(
      native.filter(([name]) => name.endsWith(platform)).map(([name]) => name.replace(/(binding|canvas)-.*/, '$1')),
    )
    expect(families.size).toBeGreaterThan(0)
    expect(covered).toEqual(families)
  })

  it('pins every direct dependency to one version', () => {
    const all = { ...manifest.dependencies, ...manifest.devDependencies, ...manifest.optionalDependencies }
    expect(Object.values(all).filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([])
  })
})

describe('DEVELOPERS.md', () => {
  const text = readProjectFile('DEVELOPERS.md')

  it('gives a reason for every dependency', () => {
    const all = { ...manifest.dependencies, ...manifest.devDependencies, ...manifest.optionalDependencies }
    const listed = new Set([...text.matchAll(/^\| `([^`]+)` \| [^|]{10,} \|$/gm)].map((match) => match[1]))
    expect(Object.keys(all).filter((name) => !listed.has(name))).toEqual([])
  })

  it('lists the error codes of the table, all of them and no other', () => {
    const listed = [...text.matchAll(/^\| `([a-z-]+)` \| ([23]) \|/gm)].map((match) => `${match[1]} ${match[2]}`)
    const table = Object.entries(ERRORS).map(([code, { exit }]) => `${code} ${exit}`)
    expect(listed.sort()).toEqual(table.sort())
  })
})

describe('the error table', () => {
  it('holds no code that nothing throws', () => {
    const code = ['shared', 'core', 'server']
      .flatMap((folder) => sourceFiles(folder))
      .filter((file) => file !== 'shared/errors.ts')
      .map(readProjectFile)
      .join('\n')
    const unused = Object.keys(ERRORS).filter((name) => !code.includes(`'${name}'`) && !code.includes(`[${name}]`))
    expect(unused).toEqual([])
  })
})

describe('source files', () => {
  it('open with a sentence that says what they do', () => {
    const silent = ['shared', 'core', 'server', 'tests']
      .flatMap((folder) => sourceFiles(folder, ['.ts', '.mjs']))
      .filter((file) => !file.startsWith('tests/fixtures/'))
      .filter((file) => !/^(#!.*\n)?(\/\*\*|\/\/)/.test(readProjectFile(file)))
    expect(silent).toEqual([])
  })

  it('stay short enough to read in one go (data tables apart)', () => {
    const long = ['shared', 'core', 'server']
      .flatMap((folder) => sourceFiles(folder))
      .filter((file) => !/\/words\/|catalogue\/entries|html-entities|hazards|take-care/.test(file))
      .filter((file) => readProjectFile(file).split('\n').length > 350)
    expect(long).toEqual([])
  })
})
