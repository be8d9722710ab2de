import { useEffect, useRef } from 'react';
import { KeepNotice } from './keep/KeepNotice.tsx';
import { UpdateNotice } from './UpdateNotice.tsx';
import './notices.css';

/**
 * What is said at the foot of every page. It lies over the page, so that nothing moves under the hand; the
 * page is told how high it is and leaves as much room at its end, so that nothing stays hidden under it.
 */
export function Notices() {
  const foot = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const { current } = foot;
    if (!current) return;
    const { style } = document.documentElement;
    const seen = new ResizeObserver(() =>
      style.setProperty('--notices', `${current.offsetHeight}px`),
    );
    seen.observe(current);
    return () => seen.disconnect();
  }, []);
  return (
    <div ref={foot} className="notices">
      <UpdateNotice />
      <KeepNotice />
    </div>
  );
}
