/** Objects that keep fields they do not know, so that a newer or a hand-made file loses nothing on its way through. */
import { z } from 'zod'

/**
 * An object schema that keeps unknown fields when it parses. Its type lists the known fields only,
 * so that a misspelt field name is still a compile error.
 */
export function loose<Shape extends z.ZodRawShape>(shape: Shape): z.ZodObject<Shape> {
  return z.looseObject(shape)
}

/** A value that may be absent or null; both mean "not said" and come out as null. */
export function said<Schema extends z.ZodType>(schema: Schema) {
  return schema
    .nullable()
    .default(null as z.output<z.ZodNullable<Schema>> & z.core.util.NoUndefined<z.output<z.ZodNullable<Schema>>>)
}
