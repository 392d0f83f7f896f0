/** Keeps weights that were fitted without some classes, so that other fittings read each class as one that is new. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { netOf } from '../../core/draft/filed-net.ts'
import type { FiledNet } from '../../core/draft/filed-net.ts'
import type { WordNet } from '../../core/draft/word-net.ts'
import { projectRoot } from '../../server/setup/project-root.ts'

/** Some tables of weights by feature, and for each class by its title which of them has not seen it. */
export interface ApartTables<Weight> {
  tables: readonly ReadonlyMap<string, Weight>[]
  of: Readonly<Record<string, number>>
}

type Name = 'breaks' | 'cues' | 'tellings' | 'net' | 'break-net' | 'turn-net'

const fileOf = (name: Name): string => path.join(projectRoot(), `.build/fit/${name}-apart.json`)

export function writeApart<Weight>(name: Name, { tables, of }: ApartTables<Weight>): void {
  mkdirSync(path.dirname(fileOf(name)), { recursive: true })
  writeFileSync(fileOf(name), JSON.stringify({ tables: tables.map((table) => [...table]), of }))
}

/**
 * The table for a title.
 * @param unseen what a class is read by that is in no list: the tables in use, which have not seen it either, or the first of these, which is as good as those of the others
 */
export function readApartTables<Weight>(
  name: Name,
  unseen: 'first' | 'in use',
): (title: string) => ReadonlyMap<string, Weight> | undefined {
  let known: ApartTables<Weight> | null = null
  return (title) => {
    known ??= load<Weight>(name)
    const at = known.of[title] ?? (unseen === 'first' ? 0 : undefined)
    return at === undefined ? undefined : known.tables[at]
  }
}

function load<Weight>(name: Name): ApartTables<Weight> {
  if (!existsSync(fileOf(name))) throw new Error(`First run node .build/tests/fit/fit-${name}.js --parts.`)
  const { tables, of } = JSON.parse(readFileSync(fileOf(name), 'utf8')) as {
    tables: [string, Weight][][]
    of: Record<string, number>
  }
  return { tables: tables.map((table) => new Map(table)), of }
}

/** Nets that were fitted without some classes, and for each class by its title which of them has not seen it. */
export interface ApartNets {
  nets: readonly FiledNet[]
  of: Readonly<Record<string, number>>
}

/** What no half leaves out: sentences that stand alone. */
const IN_BOTH = 'sentences'

/** Fits a net twice, each time without every second class, shows how it does on those, and keeps both. @param titleOf the class an example comes from */
export function fitHalves<Example>(
  name: Name,
  examples: readonly Example[],
  titleOf: (example: Example) => string,
  {
    fit,
    show,
  }: {
    fit: (seen: readonly Example[]) => FiledNet
    show: (net: FiledNet, unseen: readonly Example[]) => void
  },
): void {
  const titles = [...new Set(examples.map(titleOf))].filter((title) => title !== IN_BOTH)
  const of = Object.fromEntries(titles.map((title, index) => [title, index % 2]))
  const nets = [0, 1].map((half) => {
    const net = fit(examples.filter((one) => of[titleOf(one)] !== half))
    show(
      net,
      examples.filter((one) => of[titleOf(one)] === half),
    )
    return net
  })
  const apart: ApartNets = { nets, of }
  mkdirSync(path.dirname(fileOf(name)), { recursive: true })
  writeFileSync(fileOf(name), JSON.stringify(apart))
}

/** The net for a title; that in use for a class which is in no list. */
export function readApartNets(name: Name): (title: string) => WordNet | undefined {
  let known: { nets: readonly WordNet[]; of: Readonly<Record<string, number>> } | null = null
  return (title) => {
    if (!known) {
      if (!existsSync(fileOf(name))) throw new Error(`First run node .build/tests/fit/fit-${name}.js --parts.`)
      const { nets, of } = JSON.parse(readFileSync(fileOf(name), 'utf8')) as ApartNets
      known = { nets: nets.map(netOf), of }
    }
    return known.nets[known.of[title] ?? -1]
  }
}
