/**
 * Fits what words say of position and movement and writes core/catalogue/words/en/shape-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-shapes.js [--apart] && npx prettier --write core/catalogue/words/en/shape-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { oddsOfWords, shapeTable } from '../../core/catalogue/hear-shape.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { fitShapes, shapeExamples, shapesApart } from './weigh-shapes.ts'
import type { ShapeExample, ShapeRow } from './weigh-shapes.ts'

function showApart(examples: readonly ShapeExample[]): void {
  const apart = shapesApart()
  const odds = examples.map(({ title, words }) => oddsOfWords(words, apart.of(title)))
  const shapes = [...shapeTable(fitShapes(examples)).bias.keys()]
  for (const least of [-2, -1.5, -1, -0.5, 0, 0.7]) {
    const sum = { hit: 0, found: 0, wanted: 0 }
    examples.forEach((example, index) => {
      for (const shape of shapes) {
        const isFound = (odds[index]?.get(shape) ?? -9) > least
        const isRight = example.shapes.has(shape)
        if (isFound) sum.found += 1
        if (isRight) sum.wanted += 1
        if (isFound && isRight) sum.hit += 1
      }
    })
    const percent = (part: number, of: number): string => ((100 * part) / of).toFixed(1)
    console.log(`odds over ${least}: right ${percent(sum.hit, sum.found)}, found ${percent(sum.hit, sum.wanted)}`)
  }
}

function write(rows: readonly ShapeRow[]): void {
  const lines = rows.map(
    ([shape, bias, weights]) =>
      `  ['${shape}', ${bias}, [\n${weights.map(([weight, words]) => `    [${weight}, ${JSON.stringify(words)}],`).join('\n')}\n  ]],`,
  )
  const text = `/**
 * What words and pairs of words add to the log of the odds of each position and movement. Fitted by
 * tests/fit/fit-shapes.ts, not by hand.
 */
import type { Shape } from '../../hear-shape.ts'

export const SHAPE_WEIGHTS: readonly (readonly [
  shape: Shape,
  bias: number,
  weights: readonly (readonly [number, string])[],
])[] = [
${lines.join('\n')}
]
`
  writeFileSync(path.join(projectRoot(), 'core/catalogue/words/en/shape-weights.ts'), text)
}

const examples = shapeExamples()
if (process.argv.includes('--apart')) showApart(examples)
else write(fitShapes(examples))
