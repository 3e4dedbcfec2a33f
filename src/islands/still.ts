import { Component, type JSX } from 'preact';

/**
 * A view that is drawn again only when what it shows is another, by `same`: on a long form a key changes one box, and a phone that draws
 * all of them anew at each key is felt.
 */
export const still = <P extends object>(
  View: (props: P) => JSX.Element | null,
  same: (before: P, after: P) => boolean,
) =>
  class extends Component<P> {
    override shouldComponentUpdate(next: Readonly<P>): boolean {
      return !same(this.props, next);
    }
    override render(): JSX.Element | null {
      return View(this.props);
    }
  };
