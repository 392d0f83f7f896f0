/**
 * Migration 0001: the first tables. Frozen: it imports nothing of the project and is never changed again.
 * Ids are text. `…_utc` are UTC milliseconds, `…_ms` milliseconds, `…_json` JSON as text, flags 0 or 1.
 * A primary key says notNull too: SQLite allows null in one that is not a whole number (its page "CREATE TABLE").
 */
import type { CreateTableBuilder, Kysely } from 'kysely'

export async function up(db: Kysely<unknown>): Promise<void> {
  await addClassTables(db)
  await addSheetTables(db)
  await addWorkTables(db)
  await addLessonTables(db)
  await addLogTables(db)
}

/** Class kinds, recordings, their files and transcripts. */
async function addClassTables(db: Kysely<unknown>): Promise<void> {
  await withTimes(db.schema.createTable('class_kinds'))
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('title', 'text', (c) => c.notNull())
    .addColumn('audience_json', 'text', (c) => c.notNull())
    .addColumn('equipment_json', 'text', (c) => c.notNull())
    .addColumn('music', 'text')
    .addColumn('people_json', 'text')
    .addColumn('removed', 'integer', (c) => c.notNull().defaultTo(0))
    .addColumn('row_version', 'integer', (c) => c.notNull())
    .execute()
  await withTimes(db.schema.createTable('recordings'))
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('kind_id', 'text', (c) => c.references('class_kinds.id'))
    .addColumn('title', 'text', (c) => c.notNull())
    .addColumn('language', 'text', (c) => c.notNull())
    // null = nobody has said yet
    .addColumn('audience_json', 'text')
    .addColumn('equipment_json', 'text', (c) => c.notNull())
    .addColumn('music', 'text')
    .addColumn('people_json', 'text')
    .addColumn('state', 'text', (c) => c.notNull())
    .addColumn('duration_ms', 'bigint')
    .addColumn('row_version', 'integer', (c) => c.notNull())
    .execute()
  await db.schema.createIndex('recordings_by_time').on('recordings').columns(['created_utc', 'id']).execute()
  await withTimes(db.schema.createTable('media_files'))
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('recording_id', 'text', (c) => c.notNull().references('recordings.id'))
    .addColumn('role', 'text', (c) => c.notNull())
    .addColumn('position', 'integer', (c) => c.notNull())
    .addColumn('label', 'text', (c) => c.notNull())
    .addColumn('file_name', 'text', (c) => c.notNull())
    .addColumn('bytes', 'bigint')
    .addColumn('sha256', 'text')
    .addColumn('duration_ms', 'bigint')
    .addColumn('storage_key', 'text')
    .addColumn('start_ms', 'bigint', (c) => c.notNull())
    .addColumn('drift_ppm', 'double precision', (c) => c.notNull())
    .addColumn('facts_json', 'text')
    .addColumn('row_version', 'integer', (c) => c.notNull())
    .addUniqueConstraint('media_files_place', ['recording_id', 'role', 'position'])
    .execute()
  await db.schema.createIndex('media_files_by_sum').on('media_files').column('sha256').execute()
  await db.schema
    .createTable('transcripts')
    .addColumn('recording_id', 'text', (c) => c.notNull().references('recordings.id'))
    .addColumn('version', 'integer', (c) => c.notNull())
    .addColumn('origin', 'text', (c) => c.notNull())
    .addColumn('form', 'text', (c) => c.notNull())
    .addColumn('language', 'text')
    .addColumn('file_name', 'text')
    .addColumn('text', 'text', (c) => c.notNull())
    .addColumn('sha256', 'text', (c) => c.notNull())
    .addColumn('added_by', 'text', (c) => c.notNull())
    .addColumn('created_utc', 'bigint', (c) => c.notNull())
    .addPrimaryKeyConstraint('transcripts_pk', ['recording_id', 'version'])
    .execute()
}

/** Log sheets: a sheet is its newest snapshot and the edits after it. */
async function addSheetTables(db: Kysely<unknown>): Promise<void> {
  await withTimes(db.schema.createTable('sheets'))
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('recording_id', 'text', (c) => c.notNull().unique().references('recordings.id'))
    .addColumn('version', 'integer', (c) => c.notNull())
    .execute()
  await db.schema
    .createTable('sheet_snapshots')
    .addColumn('sheet_id', 'text', (c) => c.notNull().references('sheets.id'))
    .addColumn('version', 'integer', (c) => c.notNull())
    .addColumn('sheet_json', 'text', (c) => c.notNull())
    .addColumn('at_utc', 'bigint', (c) => c.notNull())
    .addPrimaryKeyConstraint('sheet_snapshots_pk', ['sheet_id', 'version'])
    .execute()
  await db.schema
    .createTable('edits')
    .addColumn('sheet_id', 'text', (c) => c.notNull().references('sheets.id'))
    .addColumn('version', 'integer', (c) => c.notNull())
    .addColumn('op_id', 'text', (c) => c.notNull())
    .addColumn('actor', 'text', (c) => c.notNull())
    .addColumn('at_utc', 'bigint', (c) => c.notNull())
    .addColumn('op_json', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('edits_pk', ['sheet_id', 'version'])
    .addUniqueConstraint('edits_op', ['sheet_id', 'op_id'])
    .execute()
}

/** Jobs: work that a page does not wait for. */
async function addWorkTables(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('jobs')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('kind', 'text', (c) => c.notNull())
    .addColumn('state', 'text', (c) => c.notNull())
    .addColumn('priority', 'integer', (c) => c.notNull())
    .addColumn('recording_id', 'text', (c) => c.references('recordings.id'))
    // an idempotency key: asking twice with the same key is asking once
    .addColumn('job_key', 'text', (c) => c.unique())
    .addColumn('input_json', 'text', (c) => c.notNull())
    .addColumn('progress_json', 'text')
    .addColumn('result_json', 'text')
    .addColumn('error_json', 'text')
    .addColumn('attempts', 'integer', (c) => c.notNull())
    .addColumn('max_attempts', 'integer', (c) => c.notNull())
    .addColumn('cancel_asked', 'integer', (c) => c.notNull())
    .addColumn('worker_id', 'text')
    .addColumn('asked_by', 'text', (c) => c.notNull())
    .addColumn('created_utc', 'bigint', (c) => c.notNull())
    .addColumn('run_after_utc', 'bigint', (c) => c.notNull())
    .addColumn('started_utc', 'bigint')
    .addColumn('beat_utc', 'bigint')
    .addColumn('ended_utc', 'bigint')
    .execute()
  await db.schema.createIndex('jobs_by_turn').on('jobs').columns(['state', 'priority', 'created_utc', 'id']).execute()
  await db.schema.createIndex('jobs_by_recording').on('jobs').column('recording_id').execute()
}

/** Lessons: a lasting address and the versions shown there. */
async function addLessonTables(db: Kysely<unknown>): Promise<void> {
  await withTimes(db.schema.createTable('lessons'))
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('slug', 'text', (c) => c.notNull().unique())
    .addColumn('name', 'text', (c) => c.notNull())
    .addColumn('state', 'text', (c) => c.notNull())
    .addColumn('current_version', 'integer')
    .addColumn('row_version', 'integer', (c) => c.notNull())
    .execute()
  await db.schema
    .createTable('lesson_versions')
    .addColumn('lesson_id', 'text', (c) => c.notNull().references('lessons.id'))
    .addColumn('version', 'integer', (c) => c.notNull())
    .addColumn('recording_id', 'text', (c) => c.notNull().references('recordings.id'))
    .addColumn('segment_id', 'text', (c) => c.notNull())
    .addColumn('sheet_version', 'integer', (c) => c.notNull())
    .addColumn('clip_sha256', 'text', (c) => c.notNull())
    .addColumn('lesson_json', 'text', (c) => c.notNull())
    .addColumn('published_by', 'text', (c) => c.notNull())
    .addColumn('published_utc', 'bigint', (c) => c.notNull())
    .addColumn('withdrawn_by', 'text')
    .addColumn('withdrawn_utc', 'bigint')
    .addPrimaryKeyConstraint('lesson_versions_pk', ['lesson_id', 'version'])
    .execute()
  await db.schema
    .createIndex('lesson_versions_by_segment')
    .on('lesson_versions')
    .columns(['recording_id', 'segment_id'])
    .execute()
}

/** Who did what, settings, and the sequence of changes that pages follow. */
async function addLogTables(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('audit_rows')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('actor_id', 'text', (c) => c.notNull())
    .addColumn('actor_name', 'text', (c) => c.notNull())
    .addColumn('action', 'text', (c) => c.notNull())
    .addColumn('object_type', 'text', (c) => c.notNull())
    .addColumn('object_id', 'text', (c) => c.notNull())
    .addColumn('at_utc', 'bigint', (c) => c.notNull())
    .addColumn('details_json', 'text', (c) => c.notNull())
    .execute()
  await db.schema.createIndex('audit_rows_by_object').on('audit_rows').columns(['object_type', 'object_id']).execute()
  await db.schema.createIndex('audit_rows_by_time').on('audit_rows').columns(['at_utc', 'id']).execute()
  await db.schema
    .createTable('settings')
    .addColumn('name', 'text', (c) => c.primaryKey().notNull())
    .addColumn('value_json', 'text', (c) => c.notNull())
    .addColumn('updated_utc', 'bigint', (c) => c.notNull())
    .execute()
  await db.schema
    .createTable('counters')
    .addColumn('name', 'text', (c) => c.primaryKey().notNull())
    .addColumn('value', 'bigint', (c) => c.notNull())
    .execute()
  await (db as Kysely<{ counters: { name: string; value: number } }>)
    .insertInto('counters')
    .values({ name: 'events', value: 0 })
    .execute()
  await db.schema
    .createTable('events')
    .addColumn('seq', 'bigint', (c) => c.primaryKey().notNull())
    .addColumn('topic', 'text', (c) => c.notNull())
    .addColumn('object_id', 'text', (c) => c.notNull())
    .addColumn('at_utc', 'bigint', (c) => c.notNull())
    .execute()
}

function withTimes<Name extends string>(table: CreateTableBuilder<Name, never>) {
  return table
    .addColumn('created_utc', 'bigint', (c) => c.notNull())
    .addColumn('updated_utc', 'bigint', (c) => c.notNull())
}
