# `make binder` sets up .venv and compiles the example; DEVELOPERS.md tells the rest.
# PYTHON=... names the interpreter that makes .venv. The tests start Python some hundred times:
# without byte code on disk each start would compile all modules anew, two seconds a time.
SPEC = specs/screw-jack/screw-jack.yaml
BIN = .venv/bin

.PHONY: binder test lint check format bench locks clean

binder:
	@PYTHON="$(PYTHON)" sh .ci/setup.sh run
	$(BIN)/binder build $(SPEC)

test:
	@PYTHON="$(PYTHON)" sh .ci/setup.sh dev
	env -u PYTHONDONTWRITEBYTECODE $(BIN)/python -m pytest

lint:
	@PYTHON="$(PYTHON)" sh .ci/setup.sh dev
	$(BIN)/ruff format --check
	$(BIN)/ruff check
	$(BIN)/mypy
	$(BIN)/lint-imports --no-logo

check: lint test

format:
	@PYTHON="$(PYTHON)" sh .ci/setup.sh dev
	$(BIN)/ruff format
	$(BIN)/ruff check --fix

bench:
	@PYTHON="$(PYTHON)" sh .ci/setup.sh dev
	$(BIN)/python -m tests.bench

locks:
	.ci/locks/renew.sh

clean:
	find output -mindepth 1 ! -name .gitkeep -delete
	rm -rf .venv dist .mypy_cache .pytest_cache .ruff_cache .import_linter_cache .hypothesis
