import { useEffect } from 'react';
import { Link } from 'wouter';
import { useMe } from '../api/index.js';
import { pagesOf } from '../pages.js';
import { MessageLine, TitleBlock } from '../ui/index.js';

/** An address of nothing: which one, and the ways on. */
export const NoSuchPage = ({ path }: { readonly path: string }) => {
  useEffect(() => {
    document.title = 'No such page, Drumline';
  }, []);
  return (
    <>
      <TitleBlock title="No such page" />
      <div className="work">
        <MessageLine
          kind="note"
          what={`There is no page at ${path}`}
          why="Its address was typed wrong, or it is of another version of Drumline."
          next="Go on with one of these, or with the list of pages:"
        >
          <PageLinks />
        </MessageLine>
      </div>
    </>
  );
};

/** The ways on that are open to the person. */
export const PageLinks = () => (
  <div className="acts">
    {pagesOf(useMe()).map(({ path, name }) => (
      <Link key={path} className="button small" href={path}>
        {name}
      </Link>
    ))}
  </div>
);
