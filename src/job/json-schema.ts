import type { Field, Fields } from './field.ts'
import { JOB } from './schema/job.ts'

/** The form of a job file as JSON Schema, for an editor. */
export function jobSchema(): object {
  return { $schema: 'https://json-schema.org/draft/2020-12/schema', title: 'fettle job', ...schemaOf(JOB) }
}

function schemaOf(field: Field): object {
  const about = {
    description: field.measure === undefined ? field.says : `${field.says} (to measure: ${field.measure})`,
    ...(field.example === undefined ? {} : { examples: [field.example] })
  }
  switch (field.is) {
    case 'map':
      return { type: 'object', ...about, properties: propertiesOf(field.of), required: requiredOf(field.of), additionalProperties: false }
    case 'named':
      return { type: 'object', ...about, additionalProperties: schemaOf(field.of) }
    case 'list':
      return { type: 'array', ...about, items: schemaOf(field.of) }
    case 'choice':
      return {
        ...about,
        enum: [...field.of, ...field.of.filter(one => /^\d+$/.test(one)).map(Number)],
        ...(field.default === undefined ? {} : { default: field.default })
      }
    case 'quantity':
      return {
        type: ['string', 'number'],
        ...about,
        'x-quantity': field.kind,
        ...(field.default === undefined ? {} : { default: field.default })
      }
    default:
      return { type: ['string', 'number'], ...about }
  }
}

function propertiesOf(fields: Fields): object {
  return Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, schemaOf(field)]))
}

function requiredOf(fields: Fields): readonly string[] {
  return Object.entries(fields).flatMap(([key, field]) => (field.required === true ? [key] : []))
}
