/** Who did what (rows that rooms write with each change), and the studio's settings. */
import { z } from 'zod'
import { Action, ObjectType } from '../../shared/actors.ts'
import type { Actor, ObjectRef } from '../../shared/actors.ts'
import type { Hold } from './hold-store.ts'
import { readJson, writeJson } from './json-column.ts'

export interface AuditRow {
  id: string
  actorId: string
  /** The name at that time. */
  actorName: string
  action: Action
  object: { type: ObjectType; id: string }
  atUtc: number
  details: Record<string, unknown>
}

export interface Audit {
  /** Notes what changed no row here, such as a backup. */
  add: (actor: Actor, action: Action, object: ObjectRef, details?: Record<string, unknown>) => Promise<void>
  /** The newest first. */
  list: (filter?: { object?: ObjectRef; limit?: number }) => Promise<AuditRow[]>
}

export interface Settings {
  /** null = never set. @throws AppError store-damaged when it is not what the schema says. */
  read: <Schema extends z.ZodType>(name: string, schema: Schema) => Promise<z.output<Schema> | null>
  write: (name: string, value: unknown, actor: Actor) => Promise<void>
}

const LIST_LIMIT = 200

export function keepAudit(hold: Hold): Audit {
  return {
    add: (actor, action, object, details) => hold.write((step) => step.audit(actor, action, object, details)),
    list: async ({ object, limit = LIST_LIMIT } = {}) => {
      const rows = await hold.db
        .selectFrom('auditRows')
        .selectAll()
        .$if(object !== undefined, (query) =>
          query.where('objectType', '=', object?.type ?? '').where('objectId', '=', object?.id ?? ''),
        )
        .orderBy('atUtc', 'desc')
        .orderBy('id', 'desc')
        .limit(limit)
        .execute()
      return rows.map(({ objectType, objectId, detailsJson, ...row }) => ({
        ...row,
        action: Action.parse(row.action),
        object: { type: ObjectType.parse(objectType), id: objectId },
        details: readJson(z.record(z.string(), z.unknown()), detailsJson, `The audit row ${row.id}`),
      }))
    },
  }
}

export function keepSettings(hold: Hold): Settings {
  return {
    read: async (name, schema) => {
      const row = await hold.db.selectFrom('settings').selectAll().where('name', '=', name).executeTakeFirst()
      return row ? readJson(schema, row.valueJson, `The setting ${name}`) : null
    },
    write: (name, value, actor) =>
      hold.write(async (step) => {
        const columns = { valueJson: writeJson(value), updatedUtc: step.nowUtc }
        await step.db
          .insertInto('settings')
          .values({ name, ...columns })
          .onConflict((conflict) => conflict.column('name').doUpdateSet(columns))
          .execute()
        await step.audit(actor, 'setting.change', { type: 'setting', id: name })
        step.emit('settings', name)
      }),
  }
}
