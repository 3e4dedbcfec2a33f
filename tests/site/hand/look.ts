/**
 * What a page in the hand is held against. Each function runs inside the page and stands alone there; each gives what it finds wrong,
 * in words, and nothing where all is well.
 */

/** The least that a finger in a glove hits, in CSS px: on pages to read, and where figures are entered and bags counted. */
export const LEAST_TARGET = { page: 48, bench: 56 } as const;
/** The smallest type on the screen, in CSS px; of words in a drawing that was made larger, and before it is. */
export const LEAST_TYPE = { words: 18, drawing: 12 } as const;
export const LEAST_UNTOUCHED = { words: 0, drawing: 11 } as const;

/**
 * Which targets are too small for a finger? Excepted as WCAG 2.5.8 does: a link in a sentence, whose size the line sets, and a word in
 * a drawing, which stands where it stands, if the same link is elsewhere on the page in full size or in a sentence.
 */
export function smallTargets({ page, bench }: typeof LEAST_TARGET): string[] {
  const sees = (each: Element): boolean => {
    const { width, height } = each.getBoundingClientRect();
    const { visibility, display } = getComputedStyle(each);
    return width > 1 && height > 1 && visibility !== 'hidden' && display !== 'none';
  };
  const inSentence = (link: Element): boolean => {
    if (!link.matches('a') || getComputedStyle(link).display !== 'inline') return false;
    let block = link.parentElement;
    while (
      block &&
      getComputedStyle(block).display.startsWith('inline') &&
      block.parentElement?.closest('main, footer, header, dialog')
    )
      block = block.parentElement;
    if (!block) return false;
    const whole = (block.textContent ?? '').trim();
    const links = [...block.querySelectorAll('a')].map((each) => each.textContent ?? '').join('');
    return whole.replace(/[\s,;.:·]/g, '').length > links.replace(/[\s,;.:·]/g, '').length;
  };
  const targets = [
    ...document.querySelectorAll(
      'a[href], button, input:not([type=file]), select, textarea, summary, label.button',
    ),
  ].filter(sees);
  const addresses = new Set(
    targets.filter((each) => !each.closest('svg')).map((each) => each.getAttribute('href')),
  );
  return targets
    .filter((each) => {
      if (inSentence(each)) return false;
      if (each.closest('svg') && addresses.has(each.getAttribute('href'))) return false;
      const least = each.closest('.bench, .sheets, .job-line, #jobs') ? bench : page;
      const { width, height } = each.getBoundingClientRect();
      return width < least - 0.01 || height < least - 0.01;
    })
    .map((each) => {
      const { width, height } = each.getBoundingClientRect();
      return `${each.tagName.toLowerCase()}${each.closest('svg') ? ' in a drawing' : ''} "${(each.textContent ?? '').trim().slice(0, 40)}" ${Math.round(width)} x ${Math.round(height)}`;
    });
}

/** Which words on the screen are too small? A drawing made to the paper's size (a card, a template) is excepted. */
export function smallWords({ words, drawing }: Readonly<Record<keyof typeof LEAST_TYPE, number>>): string[] {
  const found = new Map<string, string>();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!parent || (node.textContent ?? '').trim() === '' || !parent.getClientRects().length) continue;
    if (parent.closest('script, noscript, .visually-hidden, .full-size, title, desc')) continue;
    if (parent.closest('.card') && innerWidth > 900) continue;
    const svg = parent.closest('svg');
    const drawn = svg ? (parent as Element as SVGGraphicsElement).getScreenCTM?.() : undefined;
    // As large where it is turned: the first of these is 0 then.
    const scale = drawn ? Math.hypot(drawn.a, drawn.b) : 1;
    const size = Number.parseFloat(getComputedStyle(parent).fontSize) * scale;
    if (size >= (svg ? drawing : words) - 0.05) continue;
    const where = `${svg ? 'drawing ' : ''}${parent.tagName.toLowerCase()}.${parent.getAttribute('class') ?? ''} in ${parent.parentElement?.tagName.toLowerCase()}.${parent.parentElement?.getAttribute('class') ?? ''}`;
    if (!found.has(where))
      found.set(where, `${where}: ${size.toFixed(1)} px, "${node.textContent?.trim().slice(0, 30)}"`);
  }
  return [...found.values()];
}

/** Which words run out of the page, are cut off by their box, or stand on others? */
export function crowdedWords(): string[] {
  const wrong: string[] = [];
  if (document.documentElement.scrollWidth > innerWidth)
    wrong.push(`the page is ${document.documentElement.scrollWidth} px wide, ${innerWidth} px are there`);
  interface Line {
    readonly rect: DOMRect;
    readonly text: string;
    readonly of: Element;
  }
  const lines: Line[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const of = node.parentElement;
    if (!of || (node.textContent ?? '').trim() === '') continue;
    if (
      of.closest(
        'script, noscript, .visually-hidden, .skip, svg, .short-answer, .at-hand, table.cards thead, option',
      )
    )
      continue;
    range.selectNodeContents(node);
    for (const rect of range.getClientRects())
      if (rect.width > 1 && rect.height > 1)
        lines.push({ rect, text: (node.textContent ?? '').trim().slice(0, 40), of });
  }
  for (const { rect, text, of } of lines) {
    if (of.closest('pre, .full-size')) continue;
    if (rect.right > innerWidth + 1 || rect.left < -1) wrong.push(`"${text}" runs out of the page`);
    const box = of.closest('button, a, summary, td, th, dd, dt, select, .answer')?.getBoundingClientRect();
    if (box && getComputedStyle(of).display !== 'inline' && rect.right > box.right + 1.5)
      wrong.push(`"${text}" runs out of its box`);
  }
  const inOrder = lines.sort((a, b) => a.rect.top - b.rect.top);
  for (const [place, one] of inOrder.entries()) {
    for (let next = place + 1; next < inOrder.length; next += 1) {
      const two = inOrder[next];
      if (!two || two.rect.top >= one.rect.bottom) break;
      if (one.of === two.of || one.of.contains(two.of) || two.of.contains(one.of)) continue;
      const across = Math.min(one.rect.right, two.rect.right) - Math.max(one.rect.left, two.rect.left);
      const down = Math.min(one.rect.bottom, two.rect.bottom) - Math.max(one.rect.top, two.rect.top);
      // A line's box is higher than its letters: a few pixels of two boxes may share their place.
      if (across > 2 && down > Math.min(one.rect.height, two.rect.height) * 0.35)
        wrong.push(`"${one.text}" stands on "${two.text}"`);
    }
  }
  return [...new Set(wrong)];
}

/** What in the style sheets shows something only to a pointer that hovers, or moves by itself? */
export function hoverAndMotion(): string[] {
  const wrong: string[] = [];
  const look = (rules: CSSRuleList): void => {
    for (const rule of rules) {
      if (rule instanceof CSSStyleRule) {
        if (rule.selectorText.includes(':hover'))
          for (const name of rule.style)
            if (!name.startsWith('text-decoration')) wrong.push(`${rule.selectorText} changes ${name}`);
        for (const name of rule.style)
          if (/^(?:animation|transition)/.test(name) || rule.style.getPropertyValue(name) === 'smooth')
            wrong.push(`${rule.selectorText} moves by ${name}`);
      } else if ('cssRules' in rule) look((rule as CSSGroupingRule).cssRules);
    }
  };
  for (const sheet of document.styleSheets) look(sheet.cssRules);
  return wrong;
}

/** Which words of drawings stand out less than 7 to 1 against the sheet? Axe does not look into drawings. */
export function faintDrawings(): string[] {
  const channels = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const luminance = (colour: string): number => {
    const [r = 0, g = 0, b = 0] = channels(colour)
      .slice(0, 3)
      .map((each) => (each / 255 <= 0.04045 ? each / 255 / 12.92 : ((each / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const paper = luminance(getComputedStyle(document.body).backgroundColor);
  const found = new Set<string>();
  for (const each of document.querySelectorAll('svg text')) {
    const { fill } = getComputedStyle(each);
    const ink = luminance(fill);
    const contrast = (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
    if (contrast < 7) found.add(`"${each.textContent}" ${fill}: ${contrast.toFixed(1)}`);
  }
  return [...found];
}
