import type { JobValues } from './job-fields.ts';

/**
 * That the patches here are no help on this roof, where it is not a metal one.
 * @example ofCover({ roof: { cover: 'metal' } }) // => []
 */
export const ofCover = ({
  roof: { cover },
}: {
  readonly roof: Pick<JobValues['roof'], 'cover'>;
}): string[] =>
  cover === 'metal'
    ? []
    : [
        `The cover of this roof is ${cover}: the patches here are for metal roofs. Ask a roofer how a hole in this one is closed.`,
      ];
