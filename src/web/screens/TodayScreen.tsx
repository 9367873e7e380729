/** Today: what to do next. */

export function TodayScreen() {
  return (
    <main id="main" className="page">
      <h1>Today</h1>
    </main>
  );
}
