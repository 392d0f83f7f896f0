#!/usr/bin/env node
// The repslate command: makes sure that the build is there, then runs it.
import '../setup/optimise-later.mjs'
import { prepare } from '../setup/prepare.mjs'

prepare()
const { main } = await import('../../.build/server/cli/main.js')
process.exitCode = await main(process.argv.slice(2))
