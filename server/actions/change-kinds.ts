/** Class kinds: what a kind of class always has, said once. */
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { Audience, Music, PersonShown } from '../../shared/log-sheet.ts'
import type { ClassKind } from '../store/keep-kinds.ts'
import type { Studio } from '../studio.ts'

export const KindFields = z.object({
  title: z.string().trim().min(1, 'Give the kind of class a name.').max(200),
  audience: z.array(Audience),
  equipment: z.array(z.string().trim().min(1).max(80)).max(60),
  music: Music.nullable(),
  people: z.array(PersonShown).max(100).nullable(),
})
export type KindFields = z.infer<typeof KindFields>

type Needs = Pick<Studio, 'store' | 'actor'>

export async function addKind({ store, actor }: Needs, input: z.input<typeof KindFields>): Promise<ClassKind> {
  const fields = KindFields.parse(input)
  mustBeAllowed(actor, 'kind.add', { type: 'kind', id: 'new' })
  return store.kinds.add(fields, actor)
}

/** @throws AppError row-missing, row-changed, not-allowed */
export async function changeKind(
  { store, actor }: Needs,
  kind: { id: string; rowVersion: number },
  input: z.input<typeof KindFields>,
): Promise<ClassKind> {
  const fields = KindFields.parse(input)
  mustBeAllowed(actor, 'kind.change', { type: 'kind', id: kind.id })
  return store.kinds.change(kind.id, kind.rowVersion, fields, actor)
}

/** Recordings of it keep what it lent. @throws AppError row-missing, row-changed, not-allowed */
export async function removeKind({ store, actor }: Needs, id: string): Promise<void> {
  mustBeAllowed(actor, 'kind.remove', { type: 'kind', id })
  await store.kinds.remove(id, actor)
}
