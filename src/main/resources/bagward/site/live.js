'use strict';
// Keeps an open page in step with the board: a message says that there is a new one, the page is asked for again, and
// the parts that are marked as live are exchanged. Nothing else is touched, so what a person types stays.
(() => {
  const LOST_AFTER_MS = 15000;
  const LEAST_MS_BETWEEN = 900;
  const link = document.getElementById('link');
  const news = document.getElementById('news');
  let heardAt = Date.now();
  let fetchedAt = 0;
  let timer = 0;
  let held = false;

  const typing = (region) => {
    const active = document.activeElement;
    return region.contains(active) && ['INPUT', 'SELECT', 'TEXTAREA'].includes(active.tagName);
  };

  const exchange = (region, fresh) => {
    if (!fresh || region.outerHTML === fresh.outerHTML || typing(region)) {
      return;
    }
    const open = [...region.querySelectorAll('details[open]')].map((d) => d.id);
    const active = region.contains(document.activeElement) ? document.activeElement : null;
    const address = active && active.getAttribute('href');
    region.className = fresh.className;
    region.replaceChildren(...fresh.childNodes);
    open.forEach((id) => id && document.getElementById(id)?.setAttribute('open', ''));
    if (address) {
      [...region.querySelectorAll('a')].find((a) => a.getAttribute('href') === address)?.focus();
    }
  };

  const tell = (fresh) => {
    const words = fresh?.dataset.news;
    if (news && words && words !== news.dataset.news) {
      news.dataset.news = words;
      news.textContent = words;
    }
  };

  const refresh = async () => {
    fetchedAt = Date.now();
    try {
      const answer = await fetch(location.href, {cache: 'no-store', headers: {'X-Live': '1'}});
      if (!answer.ok) {
        return;
      }
      const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
      document.querySelectorAll('[data-live]').forEach((region) => exchange(region, page.getElementById(region.id)));
      tell(page.getElementById('news'));
    } catch {
      // The clock below tells the reader when nothing comes any more.
    }
  };

  const refreshSoon = () => {
    if (timer || held) {
      return;
    }
    const wait = Math.max(0, fetchedAt + LEAST_MS_BETWEEN - Date.now());
    timer = setTimeout(() => {
      timer = 0;
      refresh();
    }, wait);
  };

  const heard = () => {
    const was = link.hidden;
    heardAt = Date.now();
    link.hidden = true;
    if (!was) {
      refreshSoon();
    }
  };

  const watchLink = () => {
    const silent = Date.now() - heardAt;
    if (silent < LOST_AFTER_MS) {
      return;
    }
    const minutes = Math.floor(silent / 60000);
    const words = 'Link lost ' + (minutes < 2 ? Math.round(silent / 10000) * 10 + ' s' : minutes + ' min')
      + ' ago. This page shows what was known then.';
    if (link.textContent !== words) {
      link.textContent = words;
    }
    link.hidden = false;
  };

  const addHold = () => {
    const place = document.querySelector('.bottom, .wall-bottom');
    if (!place) {
      return;
    }
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'hold';
    button.textContent = 'Hold this page still';
    button.setAttribute('aria-pressed', 'false');
    button.addEventListener('click', () => {
      held = !held;
      button.setAttribute('aria-pressed', String(held));
      button.textContent = held ? 'Held still – go on' : 'Hold this page still';
      if (!held) {
        refreshSoon();
      }
    });
    place.append(button);
  };

  if (document.querySelector('[data-live]') && window.EventSource) {
    const stream = new EventSource('/live');
    stream.addEventListener('board', () => {
      heard();
      refreshSoon();
    });
    stream.addEventListener('beat', heard);
    stream.addEventListener('open', heard);
    setInterval(watchLink, 1000);
    setInterval(() => {
      const patience = document.querySelector('[data-busy]') ? 3000 : 20000;
      if (Date.now() - fetchedAt > patience) {
        refreshSoon();
      }
    }, 5000);
    addHold();
  }
})();
