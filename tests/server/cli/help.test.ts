// The help texts are frozen: outsiders learn the commands from them.
import type { Command } from 'commander'
import { expect, it } from 'vitest'
import { buildProgram, main } from '../../../server/cli/main.ts'
import { fakeIo } from '../../helpers/fake-io.ts'

const allHelp = (command: Command): string =>
  [command, ...command.commands.flatMap((child) => [child, ...child.commands])]
    .map((each) => each.helpInformation())
    .join('\n----\n')

it('prints the same help as before for every command', async () => {
  const program = buildProgram(fakeIo(), () => undefined)
  await expect(allHelp(program)).toMatchFileSnapshot('../../fixtures/golden/help.txt')
})

it.each(['--help', 'help', 'draft --help', 'read dose --help'])('%s is no error', async (line) => {
  const io = fakeIo()
  expect(await main(line.split(' '), io)).toBe(0)
  expect(io.printed.out).toContain('Usage: repslate')
})

it.each([['unknown'], ['draft'], ['cut', 'a.mp4', 'b.json'], ['draft', 'x.txt', '--nonsense'], ['read', 'poem']])(
  'wrong words (%s …) are bad input',
  async (...words) => {
    const io = fakeIo()
    expect(await main(words, io)).toBe(2)
    expect(io.printed.said).not.toBe('')
  },
)
