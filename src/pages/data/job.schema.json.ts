import { jobSchema } from '../../job/json-schema.ts';

/** The shape of a job file, for editors and other programs. */
export const GET = () =>
  new Response(`${JSON.stringify(jobSchema(), null, 2)}\n`, {
    headers: { 'content-type': 'application/schema+json' },
  });
