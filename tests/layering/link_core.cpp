// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing but the whole of `core`, linked against the short list of libraries it may use.

int main() { return 0; }
