// Runs after `npm ci` or `npm install`: links the repslate command so that `npx repslate` finds it.
import { linkCommand } from './prepare.mjs'

linkCommand()
