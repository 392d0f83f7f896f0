// Lets Node 20 optimise later: most of the code that reads a class runs a few thousand times, and optimising it sooner takes longer than it saves. Later Nodes know no such flag and need none.
import { setFlagsFromString } from 'node:v8'

if (process.versions.node.startsWith('20.')) setFlagsFromString('--interrupt-budget=1000000')
