import { type Token, Tokenizer, TokenizerMode } from 'parse5';

/** A beginning tag of a page, with where it and its attributes stand. */
export type Tag = Token.TagToken;

const nothing = (): void => undefined;

/** Elements that hold no others, the title of a drawing among them as we write it: what looks like a tag in them is text. */
const holdText: Readonly<Record<string, Tokenizer['state']>> = {
  script: TokenizerMode.SCRIPT_DATA,
  style: TokenizerMode.RAWTEXT,
  title: TokenizerMode.RCDATA,
  textarea: TokenizerMode.RCDATA,
};

/**
 * Every beginning tag of a page, in the order of its text; what stands inside a template or for readers without script among them. No tree
 * is made of the elements, which takes as long again.
 * @example tagsIn('<p id="a">1 < 2</p>').map(({ tagName }) => tagName) // => ['p']
 */
export function tagsIn(html: string): Tag[] {
  const found: Tag[] = [];
  const tokenizer = new Tokenizer(
    { sourceCodeLocationInfo: true },
    {
      onStartTag: (tag) => {
        found.push(tag);
        const text = holdText[tag.tagName];
        if (text !== undefined) tokenizer.state = text;
      },
      onEndTag: nothing,
      onCharacter: nothing,
      onNullCharacter: nothing,
      onWhitespaceCharacter: nothing,
      onComment: nothing,
      onDoctype: nothing,
      onEof: nothing,
      onParseError: null,
    },
  );
  tokenizer.write(html, true);
  return found;
}

/** Where an attribute stands in the text of its page; where its tag begins, if that is not known. */
export function placeOfAttribute(tag: Tag, name: string): { line: number; column: number } {
  const at = tag.location?.attrs?.[name] ?? tag.location;
  return { line: at?.startLine ?? 1, column: at?.startCol ?? 1 };
}
