"""What keys and the palette can do; the application adds workers and looks."""

from __future__ import annotations

import asyncio

from textual import work

from guidebot.tui import clipboard, look
from guidebot.tui.base import Base
from guidebot.tui.forms import case_from, dog_fields
from guidebot.tui.messages import Told
from guidebot.tui.screens import help as help_page
from guidebot.tui.screens.card import Form, Note
from guidebot.tui.screens.find import Find
from guidebot.tui.screens.hands import HandsScreen
from guidebot.tui.screens.pick import PickDog
from guidebot.tui.screens.talk import TalkScreen
from guidebot.tui.screens.today import TodayScreen


class Actions(Base):
    """The actions, each reached by a key and by the palette."""

    def to_front(self) -> None:
        """Nothing may cover an alert: close the windows above the screen."""
        top = self.screen
        if not top.is_modal:
            return
        if not top.is_mounted or not top.children:
            # It is still being built, and would miss its own parts if it were closed now.
            self.set_timer(0.05, self.to_front)
            return
        self.workers.cancel_node(top)
        self.pop_screen()
        self.call_later(self.to_front)

    async def open_passage(self, key: str) -> None:
        """Show a passage in Talk."""
        await self.action_area("talk")
        screen = self.screen
        if isinstance(screen, TalkScreen):
            screen.open_passage(key)

    async def action_area(self, name: str) -> None:
        """Go to one of the main screens."""
        self.to_front()
        if self.current_mode != name:
            await self.switch_mode(name)

    async def action_hands(self, what: str) -> None:
        """Go to Hands on and begin."""
        await self.action_area("hands")
        screen = self.screen
        if isinstance(screen, HandsScreen):
            screen.start(what)

    async def action_diary(self) -> None:
        """Write in the diary."""
        await self.action_area("today")
        screen = self.screen
        if isinstance(screen, TodayScreen):
            screen.action_diary(0)

    def action_acknowledge(self) -> None:
        """The alert was read; with none open, show the last one again."""
        session = self.session
        if session.pending:
            session.acknowledge()
        elif session.seen:
            session.warn(session.seen)
        self.renew()

    def action_help(self) -> None:
        """The help page."""
        if not self.screen.is_modal:
            self.push_screen(Note("Help", help_page.TEXT))

    @work(group="form", exit_on_error=False)
    async def action_pick_dog(self) -> None:
        """Choose a dog, or add one."""
        if self.screen.is_modal:
            return
        picked = await self.push_screen_wait(PickDog(self.session.desk.cases()))
        if picked == PickDog.ADD:
            self.action_add_dog()
        elif picked == PickDog.NONE:
            self.choose_case(None)
        elif picked is not None:
            self.choose_case(self.session.desk.find(picked))

    @work(group="form", exit_on_error=False)
    async def action_add_dog(self) -> None:
        """Ask for a new dog and keep it."""
        guide, desk = self.session.guide, self.session.desk
        if guide is None:
            self.tell("The guide is still being opened. Please try again in a moment.")
            return
        if self.screen.is_modal:
            return
        replies = await self.push_screen_wait(
            Form("A new dog", dog_fields(guide, self.session.today()))
        )
        if replies:
            case = case_from(replies, [case.id for case in desk.cases()])
            self.choose_case(await asyncio.to_thread(desk.add, case))
            self.tell(desk.trouble or f"{case.dog} is kept on this machine only.")

    async def action_new_talk(self) -> None:
        """Forget what was said; alerts not yet read stay."""
        self.session.forget()
        await self.action_area("talk")
        self.renew()

    @work(group="form", exit_on_error=False)
    async def action_find(self) -> None:
        """Find an action, a dog or a passage, and go there."""
        if self.screen.is_modal:
            return
        entry = await self.push_screen_wait(Find())
        if entry is not None:
            self.call_later(entry[1])

    def action_plain_look(self) -> None:
        """Leave the colours to the terminal."""
        self.theme = "ansi-dark" if self.current_theme.dark else "ansi-light"

    def action_switch_look(self) -> None:
        """Light to dark and back."""
        self.theme = look.PAPER.name if self.current_theme.dark else look.LAMP.name

    @work(thread=True, group="mail", exit_on_error=False)
    def action_mail(self) -> None:
        """Copy the shown answer as a mail and say what became of it."""
        turn, guide, desk = self.session.shown, self.session.guide, self.session.desk
        if turn is None or turn.answer is None or guide is None:
            self.post_message(Told("There is no answer to copy yet."))
            return
        text = desk.mail(turn.text, turn.answer, guide, turn.case)

        def terminal(copied: str) -> None:
            self.call_from_thread(self.copy_to_clipboard, copied)

        self.post_message(Told(clipboard.copy(text, terminal, desk.folder())))
